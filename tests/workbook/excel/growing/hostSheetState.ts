import { cellArea, cellAt } from "../../../../src/workbook/cellArea";
import type { SheetState } from "../../../host/SheetState";

/** Everything of a sheet that a person can see or print, as plain data to compare; the sheet's own name left out. */
export function hostSheetState(sheet: SheetState) {
  const rules: Record<string, unknown> = {};
  // Of several rules over one cell the last counts.
  for (const { range, ...rule } of sheet.entryRules) {
    const area = cellArea(range);
    if (area === undefined) continue;
    for (let row = area.row; row < area.row + area.rows; row++)
      for (let column = area.column; column < area.column + area.columns; column++) {
        if (rule.isCleared) delete rules[cellAt(row, column)];
        else rules[cellAt(row, column)] = { ...rule, from: cellAt(area.row, area.column) };
      }
  }
  const unnamed = (value: unknown): unknown => JSON.parse(JSON.stringify(value).replaceAll(sheet.name, "this sheet"));
  return {
    cells: Object.fromEntries([...sheet.cells].map(([cell, { formula, value }]) => [cell, formula ?? value])),
    looks: Object.fromEntries([...sheet.looks].map(([cell, look]) => [cell, withoutInsides(look)])),
    rules,
    heights: Object.fromEntries(sheet.rowHeights),
    emphasis: sheet.conditionalFormats,
    page: sheet.page,
    breaks: sheet.pageBreaks,
    charts: unnamed(sheet.charts.map((chart) => ({ ...chart, id: "" }))),
    frozenRows: sheet.frozenRows,
  };
}

/** Lines inside a range tell of the rectangle in which a cell was dressed, not of the cell: beside them each has its own edges. */
const withoutInsides = (look: Record<string, unknown>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(look).filter(([name]) => !name.startsWith("border.Inside")));
