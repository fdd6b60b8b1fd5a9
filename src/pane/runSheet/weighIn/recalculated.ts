import type { Plain } from "../../../explanation/runSheet/Plain";
import type { SheetCells } from "../../../explanation/runSheet/RunCells";
import { workOut } from "../../../explanation/runSheet/workOut";
import { cell } from "../../../runsheet/expressions/Expression";
import { placeOf } from "../../../runsheet/expressions/formulaText";

/** The sheet as it would be with these cells typed: each formula is worked out when it is asked for. @param typed by name of cell */
export function recalculated<Cells extends SheetCells>(cells: Cells, typed: ReadonlyMap<string, Plain>): Cells {
  const known = new Map<string, Plain>();
  const value = (row: number, column: number): Plain => {
    const key = placeOf(cell(row, column));
    const content = typed.get(key) ?? known.get(key);
    if (content !== undefined) return content;
    const formula = cells.planned(row, column)?.formula;
    const now = formula === undefined ? cells.at(row, column) : workOut(formula, at);
    known.set(key, now);
    return now;
  };
  const at = Object.assign(value, { isFormula: (row: number, column: number) => cells.planned(row, column)?.formula !== undefined });
  return { ...cells, at };
}
