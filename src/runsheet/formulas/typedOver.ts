import { all, isNumber, when, type Condition } from "../expressions/choices";
import { cell, fixed, fn, is, range, reckon, type Cell, type Expression, type Range } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import { LABEL, type Columns } from "../sheet/Columns";
import { checkWords } from "../words/checkWords";
import { cellNumbered, numberOfLastCell } from "./cellsNamed";

/** What a sheet needs to say where it watches its own formulas. */
export interface Watched {
  readonly columns: Columns;
  readonly rows: {
    readonly head: Readonly<Record<"checks", number>>;
    readonly checks: { readonly lines: readonly { readonly row: number }[] };
  };
}

/**
 * Beside the last check: the last calculated cell that holds no formula, as a number that names it, 0 for none; of all that the answer
 * rests on, which the check itself tells, and of what rests on that check, which the line of the checks tells. Two, since nothing may
 * rest on itself.
 */
export function watchCells({ columns, rows }: Watched): { readonly below: Cell; readonly head: Cell } {
  const row = rows.checks.lines.at(-1)?.row ?? 0;
  return { below: fixed(columns.working(row, 1)), head: fixed(columns.working(row, 2)) };
}

/**
 * The number of the last cell of some areas that holds no formula; -1 in a spreadsheet that cannot say so of areas, as Gnumeric cannot.
 * @param ends rows of totals: where an area stands above one, it reaches down to it, so that a row put in above the total belongs to it
 */
export const lastTypedOver = (areas: readonly Range[], ends: readonly number[]): Expression =>
  fn("IFERROR", fn("MAX", 0, ...areas.map((area) => lastWithoutFormula(area, ends))), reckon(0, "-", 1));

function lastWithoutFormula({ from, to }: Range, ends: readonly number[]): Expression {
  const isOpen = ends.includes(to.row + 1);
  const end = fixed(cell(isOpen ? to.row + 1 : to.row, to.column));
  const isOne = from.row === end.row && from.column === end.column;
  const block = isOne ? end : range(fixed(from), end);
  const without = reckon(1, "-", fn("ISFORMULA", block));
  // By a division, 1 over 0 in the last row: the local workbook's engine compares an array of rows with the cells that stand in them.
  const isAbove = isNumber(reckon(1, "/", reckon(fn("ROW", end), "-", fn("ROW", block))));
  return numberOfLastCell(isOpen ? reckon(without, "*", isAbove) : without, block);
}

const typedOver = (at: Expression): Expression => checkWords.typedOver.found(at);

/** The line of the checks, which first tells what was typed over of the lines above and below it. */
export function watchingTheHead(sheet: Watched, line: Expression): Expression {
  const found = fn("N", watchCells(sheet).head);
  return when(is(found, ">", 0), typedOver(cellNumbered(found)), line);
}

/** The next step, which first tells whether the line of the checks was typed over, or what that watches by. */
export function watchingTheChecks(sheet: Watched, step: Expression): Expression {
  const [line, watch] = [fixed(cell(sheet.rows.head.checks, LABEL)), watchCells(sheet).head];
  const holds = (at: Cell): Condition => fn("ISFORMULA", at);
  return when(all(holds(line), holds(watch)), step, typedOver(when(holds(line), nameOf(watch), nameOf(line))));
}
