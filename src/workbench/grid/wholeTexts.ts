import { DataValidationType, WrapStrategy, type ICellData, type Injector, type IStyleData, type Nullable, type Worksheet } from "@univerjs/core";
import { FontCache, getFontStyleString, SpreadsheetSkeleton } from "@univerjs/preset-sheets-core";
import { DataValidatorRegistryService } from "@univerjs/preset-sheets-data-validation";

// Pixels: what the engine leaves on either side of a text that says nothing of its own, and what it clips off.
const PADDING = 2;
const CLIPPED = 1;
// What it keeps free of a chosen text for the arrow beside it.
const ARROW = 20;

/**
 * Mends a defect of engine 0.25.1: a text runs on over blank cells only where it is wider than its column, but is drawn from beyond the padding
 * on and clipped, so that one which just fits loses its last letter.
 */
export function countPadding(): void {
  const skeleton = SpreadsheetSkeleton.prototype;
  const original = skeleton.getOverflowPosition;
  skeleton.getOverflowPosition = function (this: SpreadsheetSkeleton, size, align, row, column, ...others) {
    const { l = PADDING, r = PADDING } = ownStyle(this.worksheet, row, column)?.pd ?? {};
    const wide = size && { ...size, width: size.width + (l ?? PADDING) + (r ?? PADDING) + 2 * CLIPPED };
    return original.call(this, wide, align, row, column, ...others);
  };
}

/** The style kept with a cell; asking for the composed one would ask again whether its text fits. */
function ownStyle(worksheet: Worksheet, row: number, column: number): Nullable<IStyleData> {
  const style = worksheet.getCellRaw(row, column)?.s;
  return typeof style === "string" ? worksheet.getStyleDataByHash(style) : style;
}

interface ListDrawing {
  getExtraStyle: (...given: unknown[]) => Nullable<IStyleData> | void;
  skipDefaultFontRender?: (rule: unknown, value?: unknown, at?: { row: number; col: number; worksheet: Worksheet }) => boolean;
  readonly canvasRender?: Nullable<{
    drawWith: (context: unknown, info: Drawn, ...others: unknown[]) => void;
  }>;
}

interface Drawn {
  readonly data: Nullable<ICellData>;
  readonly style: Nullable<IStyleData>;
  readonly primaryWithCoord: { readonly startX: number; readonly endX: number };
}

/**
 * A choice from a list is drawn as any other text where it does not fit into its column beside the arrow, which would wrap it out of sight; the
 * list opens while the cell is edited.
 */
export function drawChoicesWhole(injector: Injector): void {
  const list = injector.get(DataValidatorRegistryService).getValidatorItem(DataValidationType.LIST) as ListDrawing | undefined;
  const [drawing, skips] = [list?.canvasRender, list?.skipDefaultFontRender];
  if (list === undefined || !drawing || skips === undefined) return;
  const draw = drawing.drawWith.bind(drawing);
  drawing.drawWith = (context, info, ...others) => {
    if (fits(info.data?.v, info.style, info.primaryWithCoord.endX - info.primaryWithCoord.startX)) draw(context, info, ...others);
  };
  const extraStyle = list.getExtraStyle.bind(list);
  // The engine would wrap it, or clip it at its column.
  list.getExtraStyle = (...given) => ({ ...extraStyle(...given), tb: WrapStrategy.OVERFLOW });
  list.skipDefaultFontRender = (rule, value, at) =>
    skips.call(list, rule, value, at) &&
    (at === undefined || fits(value, ownStyle(at.worksheet, at.row, at.col), at.worksheet.getColumnWidth(at.col)));
}

const fits = (value: unknown, style: Nullable<IStyleData>, width: number): boolean =>
  typeof value !== "string" ||
  FontCache.getMeasureText(value, getFontStyleString(style ?? undefined).fontString).width <= width - ARROW - 2 * PADDING;
