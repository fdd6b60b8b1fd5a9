import { all, isNumber, when } from "../expressions/choices";
import { cell, fixed, fn, is, range, reckon, type Cell, type Expression } from "../expressions/Expression";
import { CLOCK } from "../sheet/Columns";
import type { Fired, RunSheet, Weighed } from "../sheet/RunSheet";
import { largest } from "./curves";
import { block } from "./weighings";

/** A point of a chart as two formulas. */
export interface Point {
  readonly x: Expression;
  readonly y: Expression;
}

const BELOW_ZERO = reckon(0, "-", 1);

/** One point, not seen, that spans the axes of a blank sheet with the points at 0 there; once something is weighed it lies on that. */
const frameOf = (largest: Expression, blank: Expression, begun: Expression): Point => {
  const isBegun = is(largest, ">", 0);
  return { x: when(isBegun, begun, blank), y: when(isBegun, largest, BELOW_ZERO) };
};

/** To the last round as planned, those put in by hand too, and upwards from below 0, where a chart writes no numbers: no weight is known yet. */
export function dryingFrame(sheet: RunSheet): Point {
  const { first, total } = sheet.drying.rows;
  const later = reckon(fn("ROWS", range(fixed(cell(first, CLOCK)), fixed(cell(total, CLOCK)))), "-", 2);
  return frameOf(largest(sheet, [sheet.drying]), reckon(later, "*", fn("N", sheet.settings.interval)), 0);
}

/** How long will be held is not known either. */
export const firingFrame = (sheet: RunSheet): Point =>
  frameOf(largest(sheet, sheet.fired), BELOW_ZERO, fn("N", cell(sheet.fired[0]?.rows.first ?? 0, sheet.columns.elapsed)));

// °C and °F: as far as furnaces for ashing reach; common practice, no source.
const HOTTEST = { C: 1000, F: 1800 } as const;

/** From all of the dry sample, where the curve begins, to nothing left in the hottest of furnaces. */
export function stagesFrame(sheet: RunSheet, stages: Fired): Point {
  const isBegun = is(fn("COUNT", block(sheet, stages)), ">", 0);
  return { x: when(isBegun, cell(stages.rows.heading, sheet.columns.elapsed), HOTTEST[sheet.options.degrees]), y: when(isBegun, 1, 0) };
}

/**
 * A weighing as it counts, with its minutes, for a chart: one not weighed lies on the point before it, because a chart takes the text that a
 * formula gives for 0. Before a sample's first, that of another.
 */
export function drawnPoint(sheet: RunSheet, table: Weighed, others: readonly Weighed[], row: number, sample: number): Point {
  const { columns } = sheet;
  const [minutes, counted] = [cell(row, columns.elapsed), countedAt(sheet, table, row, sample)];
  const isFirst = row === table.rows.first;
  const before = (axis: "x" | "y", otherwise: Expression): Expression => (isFirst ? otherwise : columns.drawn(row - 1, sample, axis));
  const point = (own: Cell, otherwise: Expression): Expression => when(all(isNumber(minutes), isNumber(counted)), own, otherwise);
  return { x: point(minutes, before("x", 0)), y: point(counted, before("y", largest(sheet, others))) };
}

const countedAt = ({ columns, options }: RunSheet, table: Weighed, row: number, sample: number): Cell =>
  options.panZeros ? columns.working(row, sample) : table.box(row, sample);
