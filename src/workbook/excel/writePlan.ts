import { rangeOf } from "../cellArea";
import type { SheetPlan } from "../SheetPlan";
import { sheetStyles } from "../sheetStyles";
import { alikeAreas } from "./alikeAreas";
import { applyStyle } from "./applyStyle";
import { cellBlocks } from "./cellBlocks";
import { columnPoints } from "./columnPoints";
import { CELLS_A_REQUEST, inRequests } from "./inRequests";
import { setEntryRule } from "./setEntryRule";

/** Writes everything of a plan but its chart onto a new sheet; one request unless the sheet is very large. */
export async function writePlan(context: Excel.RequestContext, worksheet: Excel.Worksheet, plan: SheetPlan): Promise<void> {
  plan.columnWidths.forEach((characters, column) => (worksheet.getCell(0, column).format.columnWidth = columnPoints(characters)));
  for (const { value, area } of alikeAreas(plan.cells, ({ style }) => style)) applyStyle(worksheet.getRange(rangeOf(area)), area, sheetStyles[value]);
  for (const rule of plan.entryRules) setEntryRule(worksheet.getRange(rule.range).dataValidation, rule);
  if (plan.frozenRows > 0) worksheet.freezePanes.freezeRows(plan.frozenRows);
  const weigh = ({ area }: { area: { rows: number; columns: number } }): number => area.rows * area.columns;
  await inRequests(context, cellBlocks(plan.cells), { limit: CELLS_A_REQUEST, weigh }, ({ area, entries }) => {
    worksheet.getRange(rangeOf(area)).formulas = entries;
  });
  // After the contents: Excel gives a General cell a format of its own when a date or a percentage is written into it.
  for (const { value, area } of alikeAreas(plan.cells, ({ format }) => format)) {
    worksheet.getRange(rangeOf(area)).numberFormat = Array.from({ length: area.rows }, () => new Array<string>(area.columns).fill(value));
  }
}
