import { all, isNumber, orNothing, when, type Condition } from "../../expressions/choices";
import { cell, fixed, fn, is, reckon, retort, LEFT_OUT, type Cell, type Expression } from "../../expressions/Expression";
import type { RunSheet } from "../../sheet/RunSheet";
import type { Fired } from "../../sheet/Weighed";
import { BELOW_ZERO, largest, ROWS_OF_DRYING } from "./curves";
import { block, countOf, latest, vesselGiven } from "../weighings";

// Above the first firing stands the weighing it begins from, in what counts and in CONSTANTWEIGHT.STEPS, which gives headings in its first
// row and the limit in g in this column.
const WEIGHINGS_BEFORE = 1;
const HEADING_ROWS = 1;
const LIMIT_COLUMN = 4;

/** The corners of a firing's band: its lower edge, then its upper one, each from and to; the times of both are the same. */
export interface FiringBandCells {
  corner(corner: number, sample: number): Cell;
  at(end: number): Cell;
}

/**
 * The tables whose band the chart of the firings draws, that of the one under way; none of stages, which are drawn against temperature. No
 * end is foretold: two to four firings, each lit anew, are no curve of one rate.
 */
export const bandedFirings = ({ fired, stages }: RunSheet): readonly Fired[] => (stages === undefined ? fired : []);

/** Rows beside the charts, below those of the drying chart. */
export function firingBandCells({ rows, columns }: RunSheet): FiringBandCells {
  const first = rows.curves.first + ROWS_OF_DRYING;
  return {
    corner: (corner, sample) => fixed(columns.working(first + corner, sample)),
    at: (end) => fixed(cell(first + end, columns.elapsed)),
  };
}

/** Of the last table that anything was weighed in, else of the first. */
const underWay = (sheet: RunSheet, of: (table: Fired) => Expression): Expression =>
  bandedFirings(sheet).reduce<Expression>(
    (before, table, index) => (index === 0 ? of(table) : when(is(fn("COUNT", block(sheet, table)), ">", 0), of(table), before)),
    BELOW_ZERO,
  );

// What counts of a weighing is text while its vessel, or a zero of its row, is not known.
const weighs = (table: Fired, sample: number): Condition =>
  all(is(countOf(table, sample), ">", 0), isNumber(latest(table, sample, WEIGHINGS_BEFORE)));

/**
 * The latest weighing less the limit in force at it, g with the vessel: the least that the next may show and still count as nothing lost.
 * Before a sample's first, what was fired last in any table, so that no axis reaches down to 0 g; on a blank sheet below 0, with the upper
 * edge at 0, so that the chart has an axis to draw on.
 */
export function firedLowerEdge(sheet: RunSheet, sample: number): Expression {
  const { criterion, limit, readability } = sheet.settings;
  const any = largest(sheet, sheet.fired);
  return underWay(sheet, (table) => {
    const given = [table.counted(sample), limit, criterion, table.minutes, vesselGiven(table.vessel(sample)), readability, LEFT_OUT];
    const row = reckon(countOf(table, sample), "+", HEADING_ROWS + WEIGHINGS_BEFORE);
    const inForce = orNothing(fn("INDEX", retort("CONSTANTWEIGHT.STEPS", ...given), row, LIMIT_COLUMN));
    const lower = reckon(latest(table, sample, WEIGHINGS_BEFORE), "-", fn("N", inForce));
    return when(weighs(table, sample), lower, when(is(any, ">", 0), any, BELOW_ZERO));
  });
}

/** As far above the latest weighing as the lower edge is below it. */
export const firedUpperEdge = (sheet: RunSheet, { corner }: FiringBandCells, sample: number): Expression =>
  underWay(sheet, (table) => {
    const mirrored = reckon(reckon(2, "*", latest(table, sample, WEIGHINGS_BEFORE)), "-", corner(0, sample));
    return when(weighs(table, sample), mirrored, fn("MAX", 0, corner(0, sample)));
  });

/**
 * From the latest firing of any sample to another held as long; no longer than a point while no limit is in force. How long will be held is
 * not known on a blank sheet: below 0.
 */
export function firingBandEnds(sheet: RunSheet, { corner, at }: FiringBandCells): readonly [from: Expression, to: Expression] {
  const { samples, across } = sheet;
  const held = (before: number): Expression =>
    underWay(sheet, (table) => {
      const count = fn("MAX", ...samples.map((sample) => countOf(table, sample)));
      return fn("N", fn("INDEX", table.minutes, before === 0 ? count : reckon(count, "+", before)));
    });
  const [lower, upper] = [0, 2].map((edge) => fn("SUM", across((sample) => corner(edge, sample)))); // prettier-ignore
  const isLimited = all(is(at(0), ">", 0), is(upper ?? 0, ">", lower ?? 0));
  return [
    when(is(largest(sheet, sheet.fired), ">", 0), held(WEIGHINGS_BEFORE), BELOW_ZERO),
    when(isLimited, reckon(reckon(2, "*", at(0)), "-", held(0)), at(0)),
  ];
}
