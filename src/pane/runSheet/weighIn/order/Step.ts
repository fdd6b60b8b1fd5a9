import { nameOf } from "../../../../explanation/runSheet/cellNames";
import type { SheetCells } from "../../../../explanation/runSheet/RunCells";
import type { Cell } from "../../../../runsheet/expressions/Expression";

/** The next box of a run, and what goes with it. */
export interface Step {
  readonly at: Cell;
  /** "vessel + char, after firing 1, sample 2" */
  readonly name: string;
  readonly unit: string;
  readonly kind: "reading" | "clock" | "words";
  /** May be passed by. */
  readonly isOptional: boolean;
  /** The box that gets the time or the day of the reading, where the row has one. */
  readonly clock?: Cell;
  /** What the sheet reckons of the reading. */
  readonly change?: Change;
  /** The row besides its own whose verdict is about it. */
  readonly total?: number;
  /** Of a fire, beside which its cautions are shown. */
  readonly isOfFire?: true;
  /** Several boxes at once that may stay blank, each choice with its words. */
  readonly skips: readonly Skip[];
}

export interface Change {
  readonly at: Cell;
  /** A fraction, to be said in percent; left out: grams. */
  readonly isShare?: true;
  readonly said: (figures: string) => string;
  /** What is doubted where it is below 0 by more than two weighings explain, and no check says so before more is weighed. */
  readonly doubtedBelow?: (grams: string) => string;
}

export interface Skip {
  readonly words: string;
  readonly over: readonly Cell[];
}

/** A sheet with what is to stay blank on it. */
export interface Work<Cells extends SheetCells = SheetCells> {
  readonly cells: Cells;
  readonly isPassed: (at: Cell) => boolean;
}

export const isBlank = ({ at }: SheetCells, { row, column }: Cell): boolean => at(row, column) === null;

export function step(cells: SheetCells, at: Cell, more: Partial<Step> = {}): Step {
  const { text, unit } = nameOf(cells, at);
  const kind = cells.planned(at.row, at.column)?.format === "hh:mm" ? "clock" : "reading";
  return { at, name: text, unit, kind, isOptional: false, skips: [], ...more };
}
