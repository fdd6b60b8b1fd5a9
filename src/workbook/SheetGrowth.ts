import { areaNamed } from "./areaNamed";
import { cellAt, type CellArea } from "./cellArea";
import type { PlannedCell, SheetPlan } from "./SheetPlan";
import type { RangeReading } from "./Workbook";

/** Whole rows put in above another. Rows count from 1, on the sheet as the steps before have left it. */
export interface RowsIn {
  readonly above: number;
  readonly count: number;
}

/** How a sheet made from a plan becomes that of a larger one, while what was typed stays and moves with its rows. */
export interface SheetGrowth {
  /** What was read of the sheet: the same has to stand there when it is changed. */
  readonly read: RangeReading;
  /** Written before anything else, in its place before the steps: tells from then on that the work is under way. */
  readonly begun: PlannedCell | undefined;
  readonly steps: readonly RowsIn[];
  /** Contents and formulas to put in, in their places after the steps; every other cell keeps what it holds. */
  readonly written: readonly PlannedCell[];
  /** Cells whose looks are put on, in their places after the steps. */
  readonly dressed: readonly PlannedCell[];
  /** The whole sheet as it is to be: its entry rules, looks under a condition, heights, chart and page are set anew. */
  readonly plan: SheetPlan;
  /** Written after everything else. */
  readonly ended: PlannedCell | undefined;
}

export interface Grown {
  /** Cells, in their places after the steps, into which somebody typed meanwhile: what they typed stands there. */
  readonly kept: readonly string[];
}

/** Where a row is after the steps; rows count from 1. */
export const rowAfter = (row: number, steps: readonly RowsIn[]): number =>
  steps.reduce((at, { above, count }) => (at >= above ? at + count : at), row);

/** Where a cell is after the steps. */
export function cellAfter(cell: string, steps: readonly RowsIn[]): string {
  const { row, column } = areaNamed(cell);
  return cellAt(rowAfter(row + 1, steps) - 1, column);
}

/** Rows put in by the steps, as they lie after all of them. @param columns how wide to take them */
export const areasPutIn = (steps: readonly RowsIn[], columns: number): CellArea[] =>
  steps.flatMap(({ above, count }, index) => {
    const later = steps.slice(index + 1);
    return Array.from({ length: count }, (_, offset) => ({ row: rowAfter(above + offset, later) - 1, column: 0, rows: 1, columns }));
  });

const A_REFERENCE = /\$?\b[A-Z]{1,3}\$?\d+\b|#REF!/gi;
const ONE_CELL_TWICE = /(\$?\b[A-Z]{1,3}\$?\d+):\1(?!\d)/g;
/** A number whole with the sign of its power, or any other word. */
const WORDS = /[\w.]+(?:(?<=E)[+-]\d+)?/g;
const A_NUMBER = /^(?:\d+(?:\.\d*)?|\.\d+)(?:E[+-]?\d+)?$/;

/**
 * True for two formulas that differ at most in the cells they name and in how the host writes them: letter case, spaces, an @, 1E-06
 * for 0.000001, C5 for C5:C5. Putting in rows changes the former.
 */
export const isSameShape = (one: string, other: string): boolean => shapeOf(one) === shapeOf(other);

/** True for two formulas that differ at most in how the host writes them. */
export const isSameFormula = (one: string, other: string): boolean => plain(one) === plain(other);

const shapeOf = (formula: string): string => plain(formula).replace(A_REFERENCE, "·");
const plain = (formula: string): string =>
  formula
    .replace(/[\s@]/g, "")
    .toUpperCase()
    .replace(ONE_CELL_TWICE, "$1")
    .replace(WORDS, (word) => (A_NUMBER.test(word) ? String(Number(word)) : word));
