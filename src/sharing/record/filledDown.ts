import { cellArea, rangeOf } from "../../workbook/cellArea";
import type { FormulaCell } from "../formulaCells";

// So many lines are read by somebody; of longer sheets each block of a filled-down formula is one line.
const MOST_LINES = 1000;

/** The formula cells of a long sheet, a formula that is filled down once for all of its cells. A short sheet's stay as they are. */
export function filledDownTogether(formulaCells: readonly FormulaCell[]): readonly FormulaCell[] {
  if (formulaCells.length <= MOST_LINES) return formulaCells;
  const found: { first: FormulaCell; last: number; key: string }[] = [];
  const open = new Map<number, (typeof found)[number]>();
  for (const formulaCell of formulaCells) {
    const place = cellArea(formulaCell.cell);
    const key = place === undefined || formulaCell.area.range !== formulaCell.cell ? undefined : relativeTo(formulaCell.formula, place.row);
    const above = place === undefined ? undefined : open.get(place.column);
    if (place !== undefined && key !== undefined && above?.key === key && above.last === place.row - 1) {
      above.last = place.row;
      continue;
    }
    const block = { first: formulaCell, last: place?.row ?? 0, key: key ?? "" };
    found.push(block);
    if (place !== undefined && key !== undefined) open.set(place.column, block);
  }
  return found.map(({ first, last }) => {
    const { row, column } = cellArea(first.cell) ?? { row: last, column: 0 };
    return last <= row ? first : { ...first, filledDown: rangeOf({ row, column, rows: last - row + 1, columns: 1 }) };
  });
}

/** The formula with a mark for its own row in every reference; undefined where a text in it might look like one. */
function relativeTo(formula: string, row: number): string | undefined {
  if (formula.includes("'") || (formula.match(/"[^"]*"/g) ?? []).some((text) => /\d/.test(text))) return undefined;
  const own = String(row + 1);
  return formula.replace(/(?<![\w.$])(\$?[A-Z]{1,3})(\d+)(?![\w.(])/gi, (whole, column: string, number: string) =>
    number === own ? `${column}[own row]` : whole,
  );
}
