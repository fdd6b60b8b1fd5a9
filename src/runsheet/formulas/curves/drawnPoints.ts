import { all, isNumber, when } from "../../expressions/choices";
import { cell, fn, is, type Cell, type Expression } from "../../expressions/Expression";
import type { RunSheet } from "../../sheet/RunSheet";
import type { Fired, Weighed } from "../../sheet/Weighed";
import { largest } from "./curves";
import { block } from "../weighings";

/** A point of a chart as two formulas. */
export interface Point {
  readonly x: Expression;
  readonly y: Expression;
}

// °C and °F: as far as furnaces for ashing reach; common practice, no source.
const HOTTEST = { C: 1000, F: 1800 } as const;

/**
 * One point, not seen, that spans the axes of a blank sheet from all of the dry sample, where the curve begins, to nothing left in the hottest of
 * furnaces; once something is weighed it lies on the first point.
 */
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
