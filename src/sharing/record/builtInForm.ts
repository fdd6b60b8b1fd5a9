import { WHY_FIXED } from "../../problems/sharing/plainCellProblems";
import { formFillsSeveral, formForNowAlone, formInSeveralCells, formWithNames, noFormBecause } from "../../problems/sharing/recordWords";
import { fixedBecause } from "../../problems/sharing/sharedCopyWords";
import { cellAt } from "../../workbook/cellArea";
import type { CellReading, RangeReading } from "../../workbook/Workbook";
import type { FormulaCell } from "../formulaCells";
import { plainFormula } from "../plain/plainFormula";
import { worksOverArrays } from "../plain/size/worksOverArrays";
import type { PlainCell } from "../plain/plainSheets";
import { WorkingsSheet } from "../plain/WorkingsSheet";

/** What the cells of a sheet held, by row and column from 0. */
export type HeldAt = (row: number, column: number) => CellReading | undefined;

export function heldIn(rows: RangeReading["rows"]): HeldAt {
  const held = new Map(rows.flat().map((reading) => [reading.cell, reading]));
  return (row, column) => held.get(cellAt(row, column));
}

// Steps on a sheet of workings name the sheet that they read.
const SHEET = "Sheet";
const NOTHING_AROUND = { sheet: SHEET, nameOf: () => undefined, tableOf: () => undefined, spillOf: () => undefined } as const;

/** A form in built-in functions, or why there is none. */
export interface BuiltInForm {
  readonly text: string;
  /** True where programs older than arrays everywhere give another value unless it is entered as an array. */
  readonly isArray: boolean;
}

const said = (text: string): BuiltInForm => ({ text, isArray: false });

/** The guarded form of a cell formula in built-in functions, or why a cell holds none; "" for a formula that calls none of our functions. */
export function builtInForm({ calls, formula, cell, area: { range } }: FormulaCell, heldAt: HeldAt): BuiltInForm {
  if (calls.length === 0) return said("");
  const alone = range === cell ? builtInAlone(formula, cell) : undefined;
  if (alone !== undefined) return alone;
  const place = { ...NOTHING_AROUND, cell, area: range };
  const workings = new WorkingsSheet("Workings");
  const here = { ...place, heldAt: (sheet: string, row: number, column: number) => (sheet === SHEET ? heldAt(row, column) : undefined) };
  const withSteps = plainFormula(formula, here, {}, workings);
  if (withSteps.kind === "none") return said(withSteps.why === "unknownName" ? formWithNames : noFormBecause(WHY_FIXED[withSteps.why]));
  if (range !== cell) return said(formFillsSeveral);
  return said(workings.cells.length === 0 && withSteps.held.length > 0 ? formForNowAlone : formInSeveralCells);
}

/** The form in one cell, whatever the cells hold that it reads; undefined where there is none. */
export function builtInAlone(formula: string, cell: string): BuiltInForm | undefined {
  const place = { ...NOTHING_AROUND, cell, area: cell };
  const alone = plainFormula(formula, place);
  return alone.kind === "formula" ? { text: alone.formula, isArray: alone.isArray || worksOverArrays(formula, place) } : undefined;
}

/** What stands in the first cell of a copy of plain cells, or why its value does. */
export function formOnCopy({ kind, why, formulas }: PlainCell): BuiltInForm {
  if (kind === "fixed") return said(fixedBecause(why === undefined ? "" : WHY_FIXED[why]));
  return "one" in formulas ? { text: formulas.one, isArray: formulas.isArray } : said(formulas.each[0]?.[0] ?? "");
}
