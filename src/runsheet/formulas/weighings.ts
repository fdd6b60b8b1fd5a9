import {
  all,
  any,
  anyWhere,
  countWhere,
  firstOf,
  isNumber,
  NOTHING,
  noNumber,
  notNumber,
  onceNumbers,
  when,
  type Condition,
} from "../expressions/choices";
import {
  cell,
  fixed,
  fn,
  is,
  range,
  reckon,
  retort,
  LEFT_OUT,
  type Call,
  type Cell,
  type Expression,
  type Joined,
  type Range,
} from "../expressions/Expression";
import { nameBelow } from "../expressions/formulaText";
import type { RunSheet } from "../sheet/RunSheet";
import type { Fired, Weighed } from "../sheet/Weighed";
import { weighingWords } from "../words/weighingWords";
import { gap, hasGap } from "./cellsNamed";

const { unjudged, verdicts, tared } = weighingWords;

/** The rows of a table from one to another, of one sample. */
const rowsOf = ({ box }: Weighed, sample: number, from: number, to: number): Range => range(fixed(box(from, sample)), fixed(box(to, sample)));

/**
 * Each box with the one below it, as two ranges of one shape. Both reach into the row of the total or past it, where no number stands,
 * so that rows put in above the total belong to both.
 */
export const pairsOf = (table: Weighed, sample: number): readonly [below: Range, above: Range] => {
  const { first, total } = table.rows;
  return [rowsOf(table, sample, first + 1, total + 1), rowsOf(table, sample, first, total)];
};

/** The boxes of all samples, down to and with the row of the total. */
export const block = (sheet: RunSheet, { box, rows }: Weighed, from = rows.first, to = rows.total): Range =>
  range(fixed(box(from, 1)), fixed(box(to, sheet.options.replicates)));

/** Whether no box of a sample is empty above a filled one. */
export const isGapless = (table: Weighed, sample: number): Condition => is(countWhere(gap(...pairsOf(table, sample))), "=", 0);

export const countOf = (table: Weighed, sample: number): Call => fn("COUNT", table.boxes(sample));

/** The empty vessel that counts, g: its box, less the balance's zero where that was read; 0 where the balance was tared. */
export function vesselCounted(box: Cell, correction: Cell | undefined): Expression {
  const weighed = correction === undefined ? box : reckon(box, "-", fn("N", correction));
  return when(isNumber(box), weighed, when(fn("ISTEXT", box), when(is(box, "=", tared), 0, NOTHING), NOTHING));
}

/** A vessel as our functions take it, to whom 0 is a blank cell. */
export const vesselGiven = (vessel: Cell): Expression => when(is(vessel, "=", 0), tared, vessel);

/** The latest weighing that counts, g with the vessel. @param before rows of what counts above the first box */
export const latest = (table: Weighed, sample: number, before: number): Call => {
  const count = countOf(table, sample);
  return fn("INDEX", table.counted(sample), before === 0 ? count : reckon(count, "+", before));
};

/** The name of the box of a sample that was filled last, of its first box while none is. */
export const lastWeighed = (table: Weighed, sample: number): Joined =>
  nameBelow(table.box(table.rows.first, sample), reckon(fn("MAX", 1, countOf(table, sample)), "-", 1));

/** The dry sample, g: the latest weighing of a steady run less the vessel; nothing before that. @param otherwise while not steady */
export const dryNet = ({ drying, vessel }: RunSheet, sample: number, otherwise: Expression = NOTHING): Expression =>
  when(isNumber(drying.steady(sample)), reckon(latest(drying, sample, 0), "-", vessel(sample)), otherwise);

/**
 * Whether a sample's dry mass is not yet known: not shown dry, and where liquids are caught, not fed moist with its moisture given
 * either; a salt, where it is not heated as weighed in.
 */
export const isNotDry = ({ drying, caught, salt, working, across }: RunSheet): Condition =>
  caught === undefined && salt === undefined
    ? is(drying.allSteady, "=", 0)
    : any(is(working.inUse, "=", 0), is(fn("COUNT", across(drying.net)), "<", working.inUse));

/** What is left after the latest firing, g, whether or not it is shown finished. */
export function firedNet(table: Fired, sample: number): Expression {
  const isWeighed = all(isGapless(table, sample), is(countOf(table, sample), ">", 0), isNumber(table.vessel(sample)));
  return when(isWeighed, reckon(latest(table, sample, 1), "-", table.vessel(sample)), NOTHING);
}

/** The weighing that the first firing is held against, g with the vessel: the dry one, or for ash the latest char. */
export const beforeFiring = ({ drying, charring, vessel }: RunSheet, table: Fired, sample: number): Expression =>
  charring === undefined || table.rows === charring.rows
    ? onceNumbers([drying.net(sample), vessel(sample)], reckon(drying.net(sample), "+", vessel(sample)))
    : when(all(isGapless(charring, sample), is(countOf(charring, sample), ">", 0)), latest(charring, sample, 1), NOTHING);

// CONSTANTWEIGHT.STEPS gives headings in its first row and the verdict in its last column.
const HEADING_ROWS = 1;
const VERDICT_COLUMN = 5;

/** Since which round a sample is steady, or the verdict on its latest one, or why there is none. */
export function steadyRound(sheet: RunSheet, sample: number): Expression {
  const { drying, settings, vessel } = sheet;
  const { readability, interval, criterion, limit } = settings;
  const { first, total } = drying.rows;
  const boxes = drying.boxes(sample);
  const clocks = range(fixed(cell(first, 1)), fixed(cell(total, 1)));
  const minutes = (from: number, to: number): Range => range(fixed(cell(from, sheet.columns.elapsed)), fixed(cell(to, sheet.columns.elapsed)));
  const notLater = reckon(
    fn("ISNUMBER", range(fixed(cell(first + 1, 1)), fixed(cell(total + 1, 1)))),
    "*",
    is(minutes(first + 1, total + 1), "<=", minutes(first, total)),
  );
  const given = [drying.counted(sample), limit, criterion, drying.minutes, vesselGiven(vessel(sample)), readability, interval];
  return firstOf(
    [
      [is(fn("COUNTA", boxes), "=", 0), NOTHING],
      [anyWhere(fn("ISTEXT", boxes)), unjudged.weightIsText],
      [hasGap(...pairsOf(drying, sample)), unjudged.rowMissing],
      [noNumber(vessel(sample)), unjudged.vesselMissing],
      [anyWhere(reckon(fn("ISNUMBER", boxes), "*", notNumber(clocks))), unjudged.clockMissing],
      [is(fn("COUNT", minutes(first, first)), "=", 0), unjudged.clockMissing],
      [anyWhere(notLater), unjudged.timesWrong],
      [is(reckon(fn("COUNT", limit, readability, interval), "+", fn("COUNTA", criterion)), "<", 4), unjudged.settingsMissing],
    ],
    judged(given, countOf(drying, sample), 0),
  );
}

/** The same by firings, from 1; the weighing before the first counts as the one they begin from. */
export function steadyFiring(sheet: RunSheet, table: Fired, sample: number): Expression {
  const { readability, criterion, limit } = sheet.settings;
  const { first, heading, fire } = table.rows;
  const boxes = table.boxes(sample);
  const held = range(fixed(table.fire(fire.first).held), fixed(table.fire(fire.last).held));
  const inStep = range(fixed(table.box(first, sample)), fixed(table.box(table.rows.last, sample)));
  const given = [table.counted(sample), limit, criterion, table.minutes, vesselGiven(table.vessel(sample)), readability, LEFT_OUT];
  return firstOf(
    [
      [is(fn("COUNTA", boxes), "=", 0), NOTHING],
      [anyWhere(fn("ISTEXT", boxes)), unjudged.weightIsText],
      [hasGap(...pairsOf(table, sample)), unjudged.rowMissing],
      [noNumber(fixed(sheet.columns.working(heading, sample))), unjudged.notDry],
      [is(reckon(fn("COUNT", limit, readability), "+", fn("COUNTA", criterion)), "<", 3), unjudged.settingsMissing],
      [all(is(criterion, "=", "per hour"), anyWhere(reckon(fn("ISNUMBER", inStep), "*", notNumber(held)))), unjudged.heldMissing],
    ],
    judged(given, countOf(table, sample), 1),
  );
}

/** @param before weighings that count above the first box */
function judged(given: readonly Expression[], count: Expression, before: number): Expression {
  const verdict = fn("INDEX", retort("CONSTANTWEIGHT.STEPS", ...given), reckon(count, "+", HEADING_ROWS + before), VERDICT_COLUMN);
  const since = retort("CONSTANTWEIGHT", ...given);
  return when(is(verdict, "=", verdicts.steady), before === 0 ? since : reckon(since, "-", before), verdict);
}

/** Since which weighing all samples are steady, 0 while one is not. @param holds what has to hold besides */
export const allSteady = ({ working, across }: RunSheet, table: Weighed, ...holds: readonly Condition[]): Expression => {
  const each = across(table.steady);
  return when(all(is(working.inUse, ">", 0), is(fn("COUNT", each), "=", working.inUse), ...holds), fn("MAX", each), 0);
};
