import { anyWhere } from "../expressions/choices";
import { fn, joined, reckon, type Cell, type Expression, type Infix, type Joined, type Range } from "../expressions/Expression";

// Columns of a run sheet's tables stay below Z.
const PER_ROW = 100;
const BEFORE_A = 64;

/**
 * The name of the last cell of a block, row by row, for which something holds: "D14".
 * @param holds worked out cell by cell over a block of the same shape, each 1 or 0
 */
export const lastCellWhere = (holds: Expression, block: Range): Joined => cellNumbered(numberOfLastCell(holds, block));

/** The same cell as a number, row and column in one; 0 where it holds for none. */
export const numberOfLastCell = (holds: Expression, block: Cell | Range): Expression =>
  fn("SUMPRODUCT", fn("MAX", reckon(holds, "*", numberOf(block))));

/** The number of each cell of a block, or of one. */
export const numberOf = (block: Cell | Range): Expression => reckon(reckon(fn("ROW", block), "*", PER_ROW), "+", fn("COLUMN", block));

/** The name of the cell that such a number stands for. */
export const cellNumbered = (number: Expression): Joined =>
  joined(fn("CHAR", reckon(BEFORE_A, "+", fn("MOD", number, PER_ROW))), fn("INT", reckon(number, "/", PER_ROW)));

/** The name of the cell so many columns to the right of another. */
export const nameAlong = (at: Cell, columns: Expression): Joined =>
  joined(fn("CHAR", reckon(reckon(BEFORE_A, "+", fn("COLUMN", at)), "+", columns)), fn("ROW", at));

/** The row of the last such cell. */
export const lastRowWhere = (holds: Expression, block: Range): Expression => fn("SUMPRODUCT", fn("MAX", reckon(holds, "*", fn("ROW", block))));

/** Whether a cell below is filled while one above it is not, and where the empty one is. @param below, above blocks one row apart */
export const gap = (below: Range, above: Range): Infix => reckon(fn("ISNUMBER", below), "*", reckon(1, "-", fn("ISNUMBER", above)));

export const hasGap = (below: Range, above: Range): Infix => anyWhere(gap(below, above));
