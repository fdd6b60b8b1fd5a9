import { all, countWhere, isNumber, orNothing, when, type Condition } from "../../expressions/choices";
import { cell, fixed, fn, is, range, reckon, retort, type Call, type Cell, type Expression, type Range } from "../../expressions/Expression";
import { CLOCK } from "../../sheet/Columns";
import type { RunSheet } from "../../sheet/RunSheet";
import type { Weighed } from "../../sheet/Weighed";
import { weighingsLeft } from "../prediction";
import { block, countOf, vesselGiven } from "../weighings";

// CONSTANTWEIGHT.STEPS gives headings in its first row and the limit in g in this column.
const HEADING_ROWS = 1;
const LIMIT_COLUMN = 4;
// DRYING.END gives the predicted final sample in this row and column of its table.
const FINAL_SAMPLE = [1, 2] as const;

/** Where the points of the drying chart stand that nobody weighs: rows beside the chart, a column a sample. */
export interface CurveCells {
  /** The corners of the band, its lower edge and then its upper one, each from and to; the minutes of both are the same. */
  band(corner: number, sample: number): Cell;
  bandAt(end: number): Cell;
  latest(sample: number): Cell;
  foretold(sample: number): Cell;
  latestAt(sample: number): Cell;
  foretoldAt(sample: number): Cell;
}

export const CORNERS = [0, 1, 2, 3] as const;
const LATEST_ROW = CORNERS.length;
const ROWS_FORETOLD = 4;
/** Of a chart where no number is known: its axis writes none at 0 and below. */
export const BELOW_ZERO = reckon(0, "-", 1);
/** Rows beside the charts that the drying chart needs. */
export const ROWS_OF_DRYING = LATEST_ROW + ROWS_FORETOLD;

export function curveCells({ rows, columns }: RunSheet): CurveCells {
  const work = (row: number, sample: number): Cell => fixed(columns.working(rows.curves.first + row, sample));
  const at = (row: number): Cell => fixed({ ...columns.working(rows.curves.first + row, 1), column: columns.elapsed });
  return {
    band: work,
    bandAt: at,
    latest: (sample) => work(LATEST_ROW, sample),
    foretold: (sample) => work(LATEST_ROW + 1, sample),
    latestAt: (sample) => work(LATEST_ROW + 2, sample),
    foretoldAt: (sample) => work(LATEST_ROW + 3, sample),
  };
}

/** The largest of what counts in some tables, g with the vessel; 0 where nothing is weighed. */
export const largest = (sheet: RunSheet, tables: readonly Weighed[]): Call =>
  fn("MAX", ...tables.map((table) => (sheet.options.panZeros ? corrected(sheet, table) : block(sheet, table))));

/** Working cells beside the boxes of all samples, with the balance's zero taken off. */
const corrected = ({ columns, options }: RunSheet, { rows: { first, total } }: Weighed): Range =>
  range(fixed(columns.working(first, 1)), fixed(columns.working(total, options.replicates)));

/**
 * The latest weighing that counts, g with the vessel. Before a sample has one, that of another, so that what hangs on it is a point on a curve
 * and stretches no axis; 0 on a blank sheet. A formula cannot be blank, and a chart takes text for 0.
 */
export function latestPoint(sheet: RunSheet, sample: number): Expression {
  const { drying } = sheet;
  const [latest, another] = [fn("INDEX", drying.counted(sample), countOf(drying, sample)), largest(sheet, [drying])];
  return when(is(countOf(drying, sample), ">", 0), when(isNumber(latest), latest, another), another);
}

export const latestMinutes = ({ drying }: RunSheet, sample: number): Expression =>
  when(is(countOf(drying, sample), ">", 0), fn("N", fn("INDEX", drying.minutes, countOf(drying, sample))), 0);

/**
 * The least that the next weighing may show and still count as the same: the latest less the limit in force at it, g with the vessel. On a
 * blank sheet below 0: with the latest at 0 it spans the axis, so that the curve can be drawn by hand.
 */
export function lowerEdge({ drying, settings, vessel }: RunSheet, { latest }: CurveCells, sample: number): Expression {
  const { readability, interval, criterion, limit } = settings;
  const given = [drying.counted(sample), limit, criterion, drying.minutes, vesselGiven(vessel(sample)), readability, interval];
  const steps = retort("CONSTANTWEIGHT.STEPS", ...given);
  const inForce = orNothing(fn("INDEX", steps, reckon(countOf(drying, sample), "+", HEADING_ROWS), LIMIT_COLUMN));
  return when(is(latest(sample), ">", 0), reckon(latest(sample), "-", fn("N", inForce)), BELOW_ZERO);
}

export const upperEdge = ({ latest, band }: CurveCells, sample: number): Expression =>
  when(is(latest(sample), ">", 0), reckon(reckon(2, "*", latest(sample)), "-", band(0, sample)), band(0, sample));

/**
 * From the latest round to the next as planned; no longer than a point while no limit is in force, and on a blank sheet the last round as
 * planned, those put in by hand too.
 */
export function bandEnds(sheet: RunSheet, cells: CurveCells): readonly [from: Expression, to: Expression] {
  const { across, settings } = sheet;
  const [latest, low] = [across(cells.latest), across((sample) => cells.band(0, sample))];
  const { first, total } = sheet.drying.rows;
  const later = reckon(fn("ROWS", range(fixed(cell(first, CLOCK)), fixed(cell(total, CLOCK)))), "-", 2);
  const isBegun = is(fn("SUM", latest), ">", 0);
  const isLimited = all(isBegun, is(fn("SUM", latest), ">", fn("SUM", low)));
  const [start, interval] = [cells.bandAt(0), fn("N", settings.interval)];
  return [when(isBegun, fn("MAX", across(cells.latestAt)), reckon(later, "*", interval)), when(isLimited, reckon(start, "+", interval), start)];
}

/** The final sample that the falling-rate curve foretells, g with the vessel; the latest weighing while nothing can be foretold. */
export function foretoldPoint({ drying, settings, vessel }: RunSheet, cells: CurveCells, sample: number): Expression {
  const { readability, limit, criterion } = settings;
  const end = retort("DRYING.END", drying.minutes, drying.counted(sample), vesselGiven(vessel(sample)), readability, limit, criterion);
  const final = reckon(vessel(sample), "+", fn("INDEX", end, ...FINAL_SAMPLE));
  const latest = cells.latest(sample);
  return when(isForetold(cells, sample), fn("IFERROR", final, latest), latest);
}

/** When it will be dry by the curve, minutes since round 1; when the latest round was while nothing can be foretold. */
export const foretoldMinutes = (sheet: RunSheet, { latestAt }: CurveCells, sample: number): Expression =>
  reckon(latestAt(sample), "+", fn("IFERROR", reckon(weighingsLeft(sheet, sample), "*", fn("N", sheet.settings.interval)), 0));

const isForetold = ({ latestAt, foretoldAt }: CurveCells, sample: number): Condition => is(foretoldAt(sample), ">", latestAt(sample));

/** Whether an end is foretold for so many samples, and how many more rounds the last of them then needs. */
export function roundsToCome(sheet: RunSheet): { readonly isFor: (samples: Expression) => Condition; readonly rounds: Expression } {
  const { latestAt, foretoldAt } = curveCells(sheet);
  const [now, then] = [sheet.across(latestAt), sheet.across(foretoldAt)];
  const most = fn("SUMPRODUCT", fn("MAX", reckon(then, "-", now)));
  return { isFor: (samples) => is(countWhere(is(then, ">", now)), "=", samples), rounds: fn("ROUND", reckon(most, "/", sheet.settings.interval), 0) };
}
