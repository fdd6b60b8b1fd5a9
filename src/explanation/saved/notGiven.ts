import { namesOf, ReadSheets, type ReadFormula } from "../../sharing/plain/ReadSheets";
import type { PlainReading } from "../../sharing/plain/PlainReading";
import type { CellReading } from "../../workbook/Workbook";
import { valueAt, type Cells } from "../formula/Cells";
import { isAsSaved } from "./isAsSaved";
import { SavedCells } from "./SavedCells";
import { SavedFormula } from "./SavedFormula";
import { runCellsNotGiven } from "./runCellsNotGiven";

/** A cell whose value is not what its formula gives, and its sheet. */
export interface CellNotGiven {
  readonly sheet: string;
  readonly cell: string;
}

/**
 * Cells that hold something else than their cell formula with a Retort call gives from its inputs as they stand, and the like of every calculated
 * cell of a run sheet. What only a spreadsheet can work out is not among them, nor is a cell in error.
 * @param checked the sheets whose cells are looked at; left out: every sheet
 */
export function notGiven(book: PlainReading, checked: readonly string[] = book.sheets.map(({ sheet }) => sheet)): readonly CellNotGiven[] {
  const sheets = new ReadSheets(book);
  const names = book.names ?? [];
  const formulaOf = SavedFormula.in({ sheets, cells: new SavedCells(sheets), nameOf: namesOf(names) });
  const ours = names.filter(({ formula }) => mayBeOurs(formula)).map(({ name }) => name.toLowerCase());
  const wanted = new Set(checked);
  const runs = book.sheets.filter(({ sheet }) => wanted.has(sheet));
  const known = new Map(runs.map((one) => [one.sheet, new Set(runCellsNotGiven(one))]));
  return sheets.formulas
    .filter((formula) => wanted.has(formula.sheet) && formula.reading.error === "")
    .filter((formula) => {
      const { sheet, reading } = formula;
      if (known.get(sheet)?.has(reading.cell) === true) return true;
      return (mayBeOurs(reading.formula) || holdsOne(reading.formula, ours)) && !isGiven(formula, formulaOf(formula), sheets);
    })
    .map(({ sheet, reading }) => ({ sheet, cell: reading.cell }));
}

const mayBeOurs = (formula: string): boolean => /retort[._]/i.test(formula);

function holdsOne(formula: string, names: readonly string[]): boolean {
  const text = names.length === 0 ? "" : formula.toLowerCase();
  return names.some((name) => text.includes(name));
}

/** True also where that cannot be told. Hosts differ in how they hand over a blank cell, so one way is enough. */
function isGiven(formula: ReadFormula, saved: SavedFormula, sheets: ReadSheets): boolean {
  return ([0, null] as const).some((blankAs) => {
    const values = saved.valuesIn(formula, blankAs);
    return values === undefined || values.some((value) => isHeld(value, formula, sheets));
  });
}

/** True where the cells that a formula fills hold what it gives. A formula in one cell that gives many values shows one of them. */
function isHeld(given: Cells, { sheet, reading, area }: ReadFormula, sheets: ReadSheets): boolean {
  if (area.rows * area.columns === 1) return given.some((row) => row.some((value) => isAsSaved(value, reading)));
  const held = (row: number, column: number): CellReading | undefined => sheets.sheet(sheet)?.at(area.row + row, area.column + column);
  for (let row = 0; row < area.rows; row++)
    for (let column = 0; column < area.columns; column++) {
      const cell = held(row, column);
      if (cell !== undefined && cell.error === "" && !isAsSaved(valueAt(given, { row, column }), cell)) return false;
    }
  return true;
}
