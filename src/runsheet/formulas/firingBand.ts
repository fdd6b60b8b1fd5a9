import { isNumber, orNothing, when, type Condition } from "../expressions/choices";
import { cell, fixed, fn, is, reckon, retort, LEFT_OUT, type Cell, type Expression } from "../expressions/Expression";
import type { Fired, RunSheet } from "../sheet/RunSheet";
import { largest, ROWS_OF_DRYING } from "./curves";
import { block, countOf, latest, vesselGiven } from "./weighings";

// Above the first firing stands the weighing it begins from, in what counts and in CONSTANTWEIGHT.STEPS, which gives headings in its first
// row and the limit in g in this column.
const WEIGHINGS_BEFORE = 1;
const HEADING_ROWS = 1;
const LIMIT_COLUMN = 4;

/** The corners of a firing's band: lower edge, then upper edge back. */
export interface FiringBandCells {
  corner(corner: number, sample: number): Cell;
  at(corner: number): Cell;
}

/**
 * The table whose band the chart of the firings draws; none of stages, which are drawn against temperature. Of char and ash the chart draws the
 * lower edge alone, of the one under way: two bands would take more cells than sheets can spare.
 */
export const bandedFirings = ({ charring, ashing, heating }: RunSheet): Fired | undefined =>
  ashing === undefined ? (charring ?? heating) : undefined;

/** Rows beside the charts, below those of the drying chart. */
export function firingBandCells({ rows, columns }: RunSheet): FiringBandCells {
  const first = rows.curves.first + ROWS_OF_DRYING;
  return {
    corner: (corner, sample) => fixed(columns.working(first + corner, sample)),
    at: (corner) => fixed(cell(first + corner, columns.elapsed)),
  };
}

/**
 * The latest weighing of a table less the limit in force at it, g with the vessel: the least that the next may show and still count as nothing
 * lost. Before its first, what was fired last in any table, so that no axis reaches down to 0 g.
 */
export function firedLowerEdge(sheet: RunSheet, table: Fired, sample: number): Expression {
  const { criterion, limit, readability } = sheet.settings;
  const given = [table.counted(sample), limit, criterion, table.minutes, vesselGiven(table.vessel(sample)), readability, LEFT_OUT];
  const count = countOf(table, sample);
  const steps = retort("CONSTANTWEIGHT.STEPS", ...given);
  const inForce = orNothing(fn("INDEX", steps, reckon(count, "+", HEADING_ROWS + WEIGHINGS_BEFORE), LIMIT_COLUMN));
  // What counts of a weighing is text while its vessel, or a zero of its row, is not known.
  const [counts, another] = [latest(table, sample, WEIGHINGS_BEFORE), largest(sheet, sheet.fired)];
  return when(is(count, ">", 0), when(isNumber(counts), reckon(counts, "-", fn("N", inForce)), another), another);
}

/** As far above the latest weighing as the lower edge is below it. */
export function firedUpperEdge(table: Fired, { corner }: FiringBandCells, sample: number): Expression {
  const counts = latest(table, sample, WEIGHINGS_BEFORE);
  const mirrored = when(isNumber(counts), reckon(reckon(2, "*", counts), "-", corner(0, sample)), corner(0, sample));
  return when(is(countOf(table, sample), ">", 0), mirrored, corner(0, sample));
}

/** From the latest firing of any sample to another held as long; no longer than a point while no limit is in force. */
export function firingBandEnds(sheet: RunSheet, table: Fired, { corner, at }: FiringBandCells): readonly [from: Expression, to: Expression] {
  const { samples, across } = sheet;
  const count = fn("MAX", ...samples.map((sample) => countOf(table, sample)));
  const held = fn("INDEX", table.minutes, reckon(count, "+", WEIGHINGS_BEFORE));
  const isLimited = is(
    fn(
      "SUM",
      across((sample) => corner(2, sample)),
    ),
    ">",
    fn(
      "SUM",
      across((sample) => corner(0, sample)),
    ),
  );
  const another = reckon(reckon(2, "*", at(0)), "-", fn("N", fn("INDEX", table.minutes, count)));
  return [fn("N", held), when(isLimited, another, at(0))];
}

/** Char and ash: the lower edge of the ash from its first firing on, before that of the char, g with the vessel. */
export const edgeUnderWay = (sheet: RunSheet, char: Fired, ash: Fired, sample: number): Expression =>
  when(isAshed(sheet, ash), firedLowerEdge(sheet, ash, sample), firedLowerEdge(sheet, char, sample));

const isAshed = (sheet: RunSheet, ash: Fired): Condition => is(fn("COUNT", block(sheet, ash)), ">", 0);

/** From the latest firing of any sample to another held as long, of the table under way; no longer than a point while no limit is in force. */
export function edgeEnds(sheet: RunSheet, char: Fired, ash: Fired, { corner, at }: FiringBandCells): readonly [from: Expression, to: Expression] {
  const { samples, across } = sheet;
  const counted = (table: Fired): Expression => fn("MAX", ...samples.map((sample) => countOf(table, sample)));
  const held = (table: Fired, more: number): Expression => fn("N", fn("INDEX", table.minutes, reckon(counted(table), "+", more)));
  const underWay = (of: (table: Fired) => Expression): Expression => when(isAshed(sheet, ash), of(ash), of(char));
  const weighedBy = (table: Fired, sample: number): Expression => {
    const counts = latest(table, sample, WEIGHINGS_BEFORE);
    return when(is(countOf(table, sample), ">", 0), when(isNumber(counts), counts, corner(0, sample)), corner(0, sample));
  };
  const weighed = (table: Fired): Expression => fn("SUM", ...samples.map((sample) => weighedBy(table, sample)));
  const edges = fn("SUM", across((sample) => corner(0, sample))); // prettier-ignore
  const another = reckon(reckon(2, "*", at(0)), "-", underWay((table) => held(table, 0))); // prettier-ignore
  return [underWay((table) => held(table, WEIGHINGS_BEFORE)), when(is(underWay(weighed), ">", edges), another, at(0))];
}
