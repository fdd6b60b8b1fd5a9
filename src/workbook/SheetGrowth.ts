import { cellArea, cellAt, type CellArea } from "./cellArea";
import type { PlannedCell, SheetPlan } from "./SheetPlan";
import type { RangeReading } from "./Workbook";

/** Whole rows put in or taken out. Rows count from 1, on the sheet as the steps before have left it. */
export type RowStep =
  | { readonly kind: "insert"; readonly before: number; readonly count: number }
  /** @property nowAt where the first of the rows stands at the end, put in elsewhere: what comes into them meanwhile goes there */
  | { readonly kind: "remove"; readonly from: number; readonly count: number; readonly nowAt: number };

/** How a sheet made from a plan becomes that of a larger one, while what was typed stays and moves with its rows. */
export interface SheetGrowth {
  /** What was read of the sheet: the same has to stand there when it is changed. */
  readonly read: RangeReading;
  /** Written before anything else, in its place before the steps: tells from then on that the work is under way. */
  readonly begun: PlannedCell | undefined;
  readonly steps: readonly RowStep[];
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

/** Where a row is after the steps, or undefined where it was taken out; rows count from 1. */
export const rowAfter = (row: number, steps: readonly RowStep[]): number | undefined =>
  steps.reduce<number | undefined>((at, step) => {
    if (at === undefined) return undefined;
    if (step.kind === "insert") return at >= step.before ? at + step.count : at;
    if (at < step.from) return at;
    return at < step.from + step.count ? undefined : at - step.count;
  }, row);

/** Where a cell is after the steps. */
export function cellAfter(cell: string, steps: readonly RowStep[]): string | undefined {
  const at = cellArea(cell);
  const row = at && rowAfter(at.row + 1, steps);
  return at === undefined || row === undefined ? undefined : cellAt(row - 1, at.column);
}

/** Rows put in by the steps, where they are after all of them; rows count from 0. @param columns how wide to take them */
export function insertedAreas(steps: readonly RowStep[], columns: number): CellArea[] {
  const rows = steps.flatMap((step, index) => {
    if (step.kind === "remove") return [];
    const later = steps.slice(index + 1);
    return Array.from({ length: step.count }, (_, offset) => rowAfter(step.before + offset, later)).flatMap((row) => row ?? []);
  });
  return [...rows]
    .sort((one, other) => one - other)
    .reduce<CellArea[]>((areas, row) => {
      const last = areas.at(-1);
      if (last !== undefined && last.row + last.rows === row - 1) return [...areas.slice(0, -1), { ...last, rows: last.rows + 1 }];
      return [...areas, { row: row - 1, column: 0, rows: 1, columns }];
    }, []);
}

const A_REFERENCE = /\$?\b[A-Z]{1,3}\$?\d+\b|#REF!/gi;
const A_NUMBER = /(?<![\w.])(\d+\.?\d*|\.\d+)(e[+-]?\d+)?(?![\w.])/gi;

/**
 * True for two formulas that differ at most in the cells they name and in how the host writes them: letter case, spaces, an @, 1E-06
 * for 0.000001. Putting in rows changes the former.
 */
export const isSameShape = (one: string, other: string): boolean => shapeOf(one) === shapeOf(other);

/** True for two formulas that differ at most in how the host writes them. */
export const isSameFormula = (one: string, other: string): boolean => plain(one) === plain(other);

const shapeOf = (formula: string): string => plain(formula).replace(A_REFERENCE, "·");
const plain = (formula: string): string =>
  formula
    .replace(/[\s@]/g, "")
    .toUpperCase()
    .replace(A_NUMBER, (written) => String(Number(written)));
