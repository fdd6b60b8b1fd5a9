import type { GridEngine } from "../../../src/workbook/grid/GridEngine";

// More than the largest sheet has.
const ROWS_SEEN = 300;

/** Everything of a sheet of the grid that a person can see or that is printed or saved, as plain data to compare. */
export function gridSheetState({ book }: GridEngine, name: string) {
  const sheet = book.getSheetByName(name);
  if (sheet === null) throw new Error(`no sheet ${name}`);
  const cells: Record<string, unknown> = {};
  sheet
    .getSheet()
    .getCellMatrix()
    .forValue((row, column, cell) => {
      const look = typeof cell?.s === "string" ? sheet.getWorkbook().getStyles().get(cell.s) : cell?.s;
      const held = { v: cell?.v ?? undefined, f: cell?.f ?? undefined, look: sorted(look) };
      if (JSON.stringify(held) !== "{}") cells[`${row} ${column}`] = held;
    });
  const rules: Record<string, unknown> = {};
  for (const { rule } of sheet.getDataValidations()) {
    for (const { startRow, endRow, startColumn, endColumn } of rule.ranges)
      for (let row = startRow; row <= endRow; row++)
        for (let column = startColumn; column <= endColumn; column++) {
          const { type, formula1, formula2, prompt, promptTitle, error } = rule;
          rules[`${row} ${column}`] = { type, formula1, formula2, prompt, promptTitle, error, first: `${startRow} ${startColumn}` };
        }
  }
  const heights = Array.from({ length: ROWS_SEEN }, (_, row) => sheet.getRowHeight(row));
  return { cells, rules, heights, custom: sheet.getCustomMetadata(), freeze: sheet.getFreeze() };
}

/** The same whatever the order in which looks were put on; what is off is the same as nothing. */
function sorted(value: unknown): unknown {
  if (typeof value !== "object" || value === null) return value === null || value === 0 ? undefined : value;
  const entries = Object.entries(value)
    .map(([name, one]) => [name, sorted(one)] as const)
    .filter(([, one]) => one !== undefined && JSON.stringify(one) !== "{}")
    .sort(([one], [other]) => (one < other ? -1 : 1));
  return entries.length === 0 ? undefined : Object.fromEntries(entries);
}
