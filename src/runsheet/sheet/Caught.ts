import { cell, fixed, range, type Cell, type Range } from "../expressions/Expression";
import type { CaughtRows, LedgerBox } from "./caughtRows";
import type { Columns } from "./Columns";

/** The apparatus that catches liquids, part by part, each sample's in its own column. */
export interface Caught {
  readonly rows: CaughtRows;
  /** A part's weight before the fire and after it, and its gain; parts from 0. */
  before(part: number, sample: number): Cell;
  after(part: number, sample: number): Cell;
  gain(part: number, sample: number): Cell;
  readonly parts: readonly number[];
  /** The same of all parts, down to and with the row below, where no number stands, so that rows put in there belong to them. */
  befores(sample: number): Range;
  afters(sample: number): Range;
  /** Gas, g, water in the liquids, %, moisture of a sample fed moist, %, and what either % is known to, %. */
  box(name: LedgerBox, sample: number): Cell;
  /** Parts weighed both before and after; what they gained, g: nothing until each that was weighed once is weighed twice. */
  pairs(sample: number): Cell;
  liquids(sample: number): Cell;
  /** What went into the fire, g: the dry sample and its water; char, liquids and gas together, g. */
  fed(sample: number): Cell;
  found(sample: number): Cell;
  says(row: number): Cell;
}

export function caughtCells(at: Columns, rows: CaughtRows): Caught {
  const parts = Array.from({ length: rows.last - rows.first + 1 }, (_, index) => index);
  const down = (cellAt: (row: number) => Cell, first: number, below: number): Range => range(fixed(cellAt(first)), fixed(cellAt(below)));
  return {
    rows,
    parts,
    before: (part, sample) => fixed(at.box(rows.before.first + part, sample)),
    after: (part, sample) => fixed(at.box(rows.first + part, sample)),
    gain: (part, sample) => fixed(at.reckoned(rows.first + part, sample)),
    befores: (sample) => down((row) => at.box(row, sample), rows.before.first, rows.heading),
    afters: (sample) => down((row) => at.box(row, sample), rows.first, rows.total),
    box: (name, sample) => fixed(at.box(rows.boxes[name], sample)),
    pairs: (sample) => fixed(at.working(rows.total, sample)),
    liquids: (sample) => fixed(at.reckoned(rows.total, sample)),
    fed: (sample) => fixed(at.working(rows.before.heading, sample)),
    found: (sample) => fixed(at.working(rows.heading, sample)),
    says: (row) => cell(row, at.verdict),
  };
}
