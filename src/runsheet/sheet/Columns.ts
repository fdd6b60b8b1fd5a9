import { cell, type Cell } from "../expressions/Expression";
import type { CheckedOptions } from "../options/RunSheetOptions";

// Columns for as many samples stand ready whatever is asked for, so that a sample added later moves nothing.
const LEAST_SLOTS = 3;

/**
 * The columns that all tables share, from 0: label, clock and boxes left of the heavy line; right of it what the sheet works out for
 * the same samples, and its verdict. Beyond what is printed stand the workings.
 */
export interface Columns {
  readonly slots: number;
  /** Columns that are printed, A on. */
  readonly width: number;
  readonly verdict: number;
  readonly workingLabel: number;
  readonly elapsed: number;
  /** Right of them, what is drawn and nothing else: the frames' two columns, then minutes and mass of each sample. */
  frame(row: number, axis: "x" | "y"): Cell;
  drawn(row: number, sample: number, axis: "x" | "y"): Cell;
  /** A sample's box, what is reckoned for it, and its working; samples count from 1. */
  box(row: number, sample: number): Cell;
  reckoned(row: number, sample: number): Cell;
  working(row: number, sample: number): Cell;
}

export const LABEL = 0;
export const CLOCK = 1;
const FIRST_BOX = 2;
export const FRAME_COLUMNS = 2;

export function columns({ replicates }: CheckedOptions): Columns {
  const slots = Math.max(LEAST_SLOTS, replicates);
  const verdict = FIRST_BOX + 2 * slots;
  const workingLabel = verdict + 2;
  const elapsed = workingLabel + slots + 1;
  return {
    slots,
    width: verdict + 1,
    verdict,
    workingLabel,
    elapsed,
    frame: (row, axis) => cell(row, elapsed + (axis === "x" ? 1 : 2)),
    drawn: (row, sample, axis) => cell(row, elapsed + FRAME_COLUMNS + (axis === "x" ? 0 : slots) + sample),
    box: (row, sample) => cell(row, FIRST_BOX + sample - 1),
    reckoned: (row, sample) => cell(row, FIRST_BOX + slots + sample - 1),
    working: (row, sample) => cell(row, workingLabel + sample),
  };
}
