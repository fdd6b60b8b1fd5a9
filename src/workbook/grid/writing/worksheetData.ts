import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
  type IBorderStyleData,
  type ICellData,
  type IObjectMatrixPrimitiveType,
  type IStyleData,
  type IWorksheetData,
} from "@univerjs/core";
import { areaNamed } from "../../areaNamed";
import { pixelsOf, POINTS_PER_PIXEL } from "../../columnPixels";
import type { PlannedCell, SheetPlan } from "../../SheetPlan";
import { HEAVY_LINE, SIDES, sheetStyles, type SheetStyle, type Side } from "../../sheetStyles";
import { cellData } from "./cellData";

/** Room to go on working below and beside what is planned. */
const ROWS = 200;
const COLUMNS = 26;
// Pixels, about one character.
export const INDENT = 8;
export const ROW_HEIGHT = 22;
// A file holds no row above 409 points (the host's published limit).
const HIGHEST_POINTS = 409;

export const pointsOf = (rowPixels: number): number => Math.min(HIGHEST_POINTS, rowPixels * POINTS_PER_PIXEL);
export const rowPixelsOf = (points: number): number => Math.round(points / POINTS_PER_PIXEL);

/** A planned sheet in the engine's own terms. Entry rules are added when the sheet is open. */
export function worksheetData(plan: SheetPlan, id: string, name: string): Partial<IWorksheetData> {
  const cells: IObjectMatrixPrimitiveType<ICellData> = {};
  for (const planned of plan.cells) {
    const { row, column } = areaNamed(planned.cell);
    (cells[row] ??= {})[column] = dataOf(planned);
  }
  const rows = Math.max(...Object.keys(cells).map(Number), 0) + 1;
  return {
    id,
    name,
    rowCount: Math.max(ROWS, rows + ROWS / 2),
    columnCount: Math.max(COLUMNS, plan.columnWidths.length),
    defaultRowHeight: ROW_HEIGHT,
    cellData: cells,
    columnData: Object.fromEntries(plan.columnWidths.map((characters, column) => [column, { w: pixelsOf(characters) }])),
    rowData: Object.fromEntries(
      (plan.rowHeights ?? []).flatMap(({ from, to, height }) =>
        Array.from({ length: to - from + 1 }, (_, index) => [from - 1 + index, { h: rowPixelsOf(height), ia: BooleanNumber.FALSE }]),
      ),
    ),
    ...(plan.gridlines === false && { showGridlines: BooleanNumber.FALSE }),
    // The grid does not print, draws no charts and shows no conditional looks; what it saves carries all three.
    custom: { print: plan.print, emphasis: plan.emphasis, charts: plan.charts },
    ...(plan.frozenRows > 0 && { freeze: { xSplit: 0, ySplit: plan.frozenRows, startRow: plan.frozenRows, startColumn: -1 } }),
  };
}

function dataOf(planned: PlannedCell): ICellData {
  const { content, formula } = planned;
  const held: ICellData = formula === undefined ? cellData(content ?? null) : { f: formula };
  return { ...held, s: gridStyle(planned) };
}

/** A planned look and number format in the engine's own terms. */
export function gridStyle({ style, format, heavyLeft }: PlannedCell): IStyleData {
  const look = style === undefined ? undefined : sheetStyles[style];
  const lines = { ...linesOf(look), ...(heavyLeft && { l: { s: BorderStyleTypes.MEDIUM, cl: { rgb: HEAVY_LINE } } }) };
  return {
    vt: look?.top === true ? VerticalAlign.TOP : VerticalAlign.MIDDLE,
    ...(look?.indent !== undefined && { pd: { l: INDENT } }),
    ...(look?.align === "right" && { ht: HorizontalAlign.RIGHT }),
    ...(look && { cl: { rgb: look.fontColour } }),
    ...(look?.fill !== undefined && { bg: { rgb: look.fill } }),
    ...(look?.bold === true && { bl: BooleanNumber.TRUE }),
    ...(look?.italic === true && { it: BooleanNumber.TRUE }),
    ...(look?.wrap === true && { tb: WrapStrategy.WRAP }),
    ...(look?.size !== undefined && { fs: look.size }),
    ...(Object.keys(lines).length > 0 && { bd: lines }),
    ...(format !== undefined && { n: { pattern: format } }),
  };
}

const IN_GRID: Readonly<Record<Side, "l" | "r" | "t" | "b">> = { left: "l", right: "r", top: "t", bottom: "b" };

function linesOf(look: SheetStyle | undefined): NonNullable<IStyleData["bd"]> {
  if (look?.foot !== undefined) return { b: { s: BorderStyleTypes.DOTTED, cl: { rgb: look.foot } } };
  if (look?.border === undefined) return {};
  const line: IBorderStyleData = { s: BorderStyleTypes.THIN, cl: { rgb: look.border } };
  return Object.fromEntries((look.sides ?? SIDES).map((side) => [IN_GRID[side], line]));
}
