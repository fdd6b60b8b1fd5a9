import type { CellStyle } from "../../workbook/SheetPlan";
import type { RangeReading } from "../../workbook/Workbook";
import { buildRunSheet } from "../buildRunSheet";
import type { CheckedOptions } from "../options/RunSheetOptions";
import { saysLabel } from "../words/olderSheets";
import { recorded } from "./record";

const HEADINGS: readonly (CellStyle | undefined)[] = ["runBand", "runLightBand", "runTotal"];

/**
 * What a sheet was made with, where every heading and total that does not stand in its place stands nowhere, and nothing of the
 * sheet's own stands there: somebody reworded it or took it away, and no row has moved.
 */
export function rewordedSheet(reading: RangeReading): CheckedOptions | undefined {
  const options = recorded(reading);
  if (options === undefined) return undefined;
  const firstColumn = reading.rows.flatMap(([first]) => (first?.cell.startsWith("A") && typeof first.value === "string" ? [first] : []));
  const [texts, everywhere] = [new Map(firstColumn.map(({ cell, value }) => [cell, value])), new Set(firstColumn.map(({ value }) => value))];
  const headings = buildRunSheet(options).cells.flatMap(({ cell, content, style }) =>
    /^A\d/.test(cell) && typeof content === "string" && HEADINGS.includes(style) ? [{ cell, content }] : [],
  );
  const own = new Set<unknown>(headings.map(({ content }) => content));
  const isMoved = headings.some(({ cell, content }) => !saysLabel(texts.get(cell), content) && (everywhere.has(content) || own.has(texts.get(cell))));
  return isMoved ? undefined : options;
}
