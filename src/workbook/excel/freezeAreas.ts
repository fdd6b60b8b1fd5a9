import { areaToFill } from "../areaNamed";
import { cellAt, rangeOf } from "../cellArea";
import type { CellContent, FrozenArea } from "../Workbook";
import { cellEntry } from "./cellEntry";
import { isErrorCode } from "./errorCodes";
import { CELLS_A_REQUEST, inRequests } from "./inRequests";

/**
 * Puts values where formulas stood; formats stay. The first cell of a spill goes first: with its formula gone, the cells
 * it filled are free to take their values.
 */
export async function freezeAreas(context: Excel.RequestContext, sheet: string, areas: readonly FrozenArea[]): Promise<void> {
  const checked = areas.map((filled) => ({ area: areaToFill(filled), values: filled.values }));
  const worksheet = context.workbook.worksheets.getItem(sheet);
  await inRequests(context, checked, { limit: CELLS_A_REQUEST, weigh: ({ area }) => area.rows * area.columns }, ({ area, values }) => {
    const entries = values.map((row) => row.map(frozenEntry));
    if (area.rows * area.columns > 1) worksheet.getRange(cellAt(area.row, area.column)).values = [entries[0]?.slice(0, 1) ?? []];
    worksheet.getRange(rangeOf(area)).values = entries;
  });
}

/**
 * Text that is empty stays text: as a blank cell it would count as 0 in formulas that stay. An error stays that error.
 * The empty string clears a cell, since null would leave it as it is.
 */
function frozenEntry(value: CellContent): string | number | boolean {
  if (value === null) return "";
  return isErrorCode(value) ? value : cellEntry(value);
}
