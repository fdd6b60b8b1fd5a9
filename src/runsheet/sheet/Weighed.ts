import { cell, fixed, range, type Cell, type Range } from "../expressions/Expression";
import { CLOCK, type Columns } from "./Columns";
import type { FiredRows, WeighedRows } from "./layout";

/** Weighings one below the other, the same round of all samples in a row. */
export interface Weighed {
  readonly rows: WeighedRows;
  /** A box, what was lost since the weighing before, and the verdict on the row. */
  box(row: number, sample: number): Cell;
  lost(row: number, sample: number): Cell;
  verdict(row: number): Cell;
  /** All boxes of a sample, down to and with the empty cell in the row of the total, so that rows put in above it belong to it. */
  boxes(sample: number): Range;
  /** What counts, g with the vessel: the boxes, or working cells with what the sheet makes of them. */
  counted(sample: number): Range;
  /** Minutes, beside what counts. */
  readonly minutes: Range;
  /** Since which weighing a sample is steady, or why it is not; and all samples together, 0 while not. */
  steady(sample: number): Cell;
  readonly allSteady: Cell;
  /** What is left at the end of the table, g without the vessel. */
  net(sample: number): Cell;
}

export interface Fired extends Weighed {
  readonly rows: FiredRows;
  /** Which firings were hot and long enough to prove that nothing more leaves, as powers of two: 2 for the first. None of stages. */
  readonly proving: Cell;
  /** The vessel as it was while this was weighed, g. */
  vessel(sample: number): Cell;
  fire(row: number): Readonly<Record<FireColumn, Cell>>;
}

export const FIRE_COLUMNS = ["lit", "set", "measured", "held", "quiet", "opened", "seen"] as const;
export type FireColumn = (typeof FIRE_COLUMNS)[number];

/** @param from the first row of what counts: that of the heading where the weighing before stands there */
export function weighed(at: Columns, rows: WeighedRows, from: number, isWorked: boolean): Omit<Weighed, "steady" | "allSteady"> {
  const down = (first: Cell, last: Cell): Range => range(fixed(first), fixed(last));
  const boxes = (sample: number): Range => down(at.box(rows.first, sample), at.box(rows.total, sample));
  return {
    rows,
    box: (row, sample) => at.box(row, sample),
    lost: (row, sample) => at.reckoned(row, sample),
    verdict: (row) => cell(row, at.verdict),
    boxes,
    counted: (sample) => (isWorked ? down(at.working(from, sample), at.working(rows.total, sample)) : boxes(sample)),
    minutes: down(cell(from, at.elapsed), cell(rows.total, at.elapsed)),
    net: (sample) => fixed(at.reckoned(rows.total, sample)),
  };
}

export function fired(at: Columns, rows: FiredRows): Fired {
  const { fire } = rows;
  return {
    ...weighed(at, rows, rows.heading, true),
    rows,
    // Not beside the heading, where the minutes of the table above reach one row past its total.
    steady: (sample) => fixed(at.working(fire.first, sample)),
    allSteady: fixed(cell(fire.first, at.elapsed)),
    proving: fixed(cell(fire.first, at.elapsed + 1)),
    vessel: (sample) => fixed(at.working(fire.heading, sample)),
    fire: (row) => Object.fromEntries(FIRE_COLUMNS.map((name, index) => [name, cell(row, CLOCK + index)])) as Record<FireColumn, Cell>,
  };
}
