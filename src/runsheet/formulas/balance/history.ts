import { all, any, countWhere, isNumber, NOTHING, onceNumbers, product, square, sum, when, type Condition } from "../../expressions/choices";
import { fixed, fn, is, range, reckon, type Call, type Expression, type Range } from "../../expressions/Expression";
import type { BalanceSheet } from "../../sheet/BalanceSheet";
import { lastRowWhere } from "../cellsNamed";
import { studentFactor } from "../results";

/** Rounds before one that judge it: fewer have no scatter to speak of. Own choice, no source. */
export const FEWEST_BEFORE = 5;

// A change of two steps is not quite that in binary: 50.02 - 50. Well below any balance, g.
const PER_GRAM = 1_000_000_000;
export const BINARY = reckon(1, "/", PER_GRAM);

/** What two roundings, of zero and of load, put into one reading, g: d sqrt(2 / 12) (GUM, JCGM 100:2008, 4.3.7). */
export const rounding = ({ setup }: BalanceSheet): Expression => reckon(fn("N", setup.step), "/", fn("SQRT", 6));

/** The change that two readings explain, g: 2 sqrt(2) s, and no less than two display steps. */
export const explainedChange = (sheet: BalanceSheet): Expression => {
  const scatter = fn("MAX", fn("N", sheet.working.scatter), rounding(sheet));
  return sum(fn("MAX", product(2, fn("SQRT", 2), scatter), reckon(2, "*", fn("N", sheet.setup.step))), BINARY);
};

/** The rounds above a row. */
const before = ({ round, rows }: BalanceSheet, row: number): Range => range(fixed(round(rows.rounds.first).reading), round(row - 1).reading);

const isJudged = (sheet: BalanceSheet, row: number): Condition =>
  row === sheet.rows.rounds.first ? is(1, "=", 0) : all(isNumber(sheet.round(row).reading), is(fn("COUNT", before(sheet, row)), ">=", FEWEST_BEFORE));

/**
 * How far a round is off the mean of those before it, g. Not of all: where a round is among those it is judged by, none of ten can lie
 * more than (n - 1) / sqrt(n) = 2.85 standard deviations off their mean.
 */
export const apartFrom = (sheet: BalanceSheet, row: number): Expression =>
  when(isJudged(sheet, row), reckon(sheet.round(row).reading, "-", row === sheet.rows.rounds.first ? 0 : fn("AVERAGE", before(sheet, row))), NOTHING);

/**
 * How far one more round lies off the mean of n before it, at a level: t s sqrt(1 + 1/n), Student's t with n - 1 degrees of freedom
 * (prediction interval of one observation; Hahn and Meeker, Statistical Intervals, 1991, chapter 4, and ISO 16269-8, from memory). Twice the
 * scatter would be passed by chance once in 7 with five rounds before, since their scatter is itself known little.
 */
const expectedWithin = (outside: Expression, count: Expression, scatter: Expression): Expression =>
  product(fn("TINV", outside, reckon(count, "-", 1)), scatter, fn("SQRT", reckon(1, "+", reckon(1, "/", count))));

// Two-sided, by chance: 1 round in 20, and 1 in 370, what lies beyond two and three standard deviations that are known.
const WARNING = reckon(1, "/", 20);
const ACTION = reckon(1, "/", 370);

/** How far this round may lie off the mean of those before, 95 %, g, and no less than one display step: a change of one step is no news. */
export const expectedOff = (sheet: BalanceSheet, row: number): Expression =>
  when(isJudged(sheet, row), row === sheet.rows.rounds.first ? 0 : atLeastAStep(sheet, before(sheet, row)), NOTHING);

/** The same of the round to come, by all there are. */
export const expectedNext = (sheet: BalanceSheet): Expression =>
  when(is(sheet.working.count, ">=", FEWEST_BEFORE), atLeastAStep(sheet, sheet.readings), NOTHING);

// Spreadsheets give t to about ten figures; decimals of a gram, well below any balance.
const NANOGRAMS = 9;

const atLeastAStep = ({ setup }: BalanceSheet, rounds: Range): Expression =>
  fn("MAX", fn("ROUND", expectedWithin(WARNING, fn("COUNT", rounds), fn("STDEV", rounds)), NANOGRAMS), fn("N", setup.step));

/**
 * Beyond what is to be expected of one round in 20, and of one in 370: warning and action limits, as Shewhart's (ISO 7870-2, from memory),
 * at least 1 and 2 steps. @param count of the rounds before
 */
export const isBeyond = ({ setup }: BalanceSheet, apart: Expression, expected: Expression, count: Expression) => {
  const off = fn("ABS", fn("N", apart));
  const t = (outside: Expression): Expression => fn("TINV", outside, reckon(count, "-", 1));
  const far = fn("MAX", reckon(product(fn("N", expected), t(ACTION)), "/", t(WARNING)), reckon(2, "*", fn("N", setup.step)));
  // Student's t is asked for only where there are rounds to be judged by.
  const beyond = (limit: Expression): Condition =>
    when(all(isNumber(apart), isNumber(expected), is(count, ">=", FEWEST_BEFORE)), is(off, ">", sum(limit, BINARY)), false);
  return { warning: beyond(fn("N", expected)), action: beyond(far) };
};

// Two-sided: what ISO 5725-2:1994, 7.3, calls an outlier and not a straggler.
const OUTLIER = reckon(1, "/", 100);

/**
 * The row of the round that lies apart from all the others, 0 for none. One slip among the rounds widens every limit worked out from
 * them, so that it and all that follow look in order; Grubbs' test finds the one farthest off the mean: G = |x - mean| / s beyond
 * (n - 1) / sqrt(n) sqrt(t^2 / (n - 2 + t^2)), Student's t at 1 % / n, two-sided, with n - 2 degrees of freedom (Grubbs 1969, from memory;
 * ISO 5725-2). s holds the rounding of the readings beside their scatter, so that readings all alike but one step are not told apart.
 */
export const roundApart = (sheet: BalanceSheet): Expression => {
  const { working, readings, setup } = sheet;
  const { mean, scatter, count } = working;
  const t = fn("TINV", reckon(OUTLIER, "/", count), reckon(count, "-", 2));
  const beyond = reckon(
    reckon(reckon(count, "-", 1), "/", fn("SQRT", count)),
    "*",
    fn("SQRT", reckon(square(t), "/", sum(reckon(count, "-", 2), square(t)))),
  );
  const far = fn("MAX", reckon(fn("MAX", readings), "-", mean), reckon(mean, "-", fn("MIN", readings)));
  const within = fn("MAX", product(beyond, fn("SQRT", sum(square(scatter), square(rounding(sheet))))), reckon(2, "*", fn("N", setup.step)));
  const isFarthest = product(fn("ISNUMBER", readings), is(fn("ABS", reckon(fn("N", mean), "-", readings)), ">=", reckon(far, "-", BINARY)));
  return when(is(count, ">", FEWEST_BEFORE), when(is(far, ">", sum(within, BINARY)), lastRowWhere(isFarthest, readings), 0), 0);
};

/**
 * How far the readings climb from the first round to the last by a straight line through all, g; below 0 where they fall.
 * b (n - 1), b = sum (i - mean i) x / (n (n^2 - 1) / 12) for rounds i.
 */
export const climb = ({ readings, working }: BalanceSheet): Expression => {
  const { mean, count } = working;
  const places = fn("ROW", readings);
  const together = reckon(countWhere(product(readings, places)), "-", reckon(mean, "*", countOf(places, readings)));
  return reckon(reckon(12, "*", together), "/", product(count, sum(count, 1)));
};

const countOf = (places: Expression, readings: Range): Expression => countWhere(product(fn("ISNUMBER", readings), places));

/**
 * Whether the readings climb or fall from round to round more than chance has them do, 1 in 100: the correlation r of reading and round
 * beyond t / sqrt(n - 2 + t^2), Student's t with n - 2 degrees of freedom (test of a slope, any statistics text), and the climb more than
 * two display steps. b^2 (n^2 - 1) n / 12 = r^2 (n - 1) s^2.
 */
export const isClimbing = (sheet: BalanceSheet): Condition => {
  const { working, setup } = sheet;
  const { count, scatter } = working;
  const t = fn("TINV", OUTLIER, reckon(count, "-", 2));
  // r^2 (n - 2 + t^2) > t^2, with r^2 = climb^2 n (n + 1) / (12 (n - 1)^2 s^2).
  const explained = product(square(climb(sheet)), count, sum(count, 1), sum(reckon(count, "-", 2), square(t)));
  const chance = product(12, square(reckon(count, "-", 1)), square(scatter), square(t));
  // A reading that is text, told by the check of the rows, would make an error of the sum.
  return when(
    all(is(count, ">", FEWEST_BEFORE), is(fn("COUNTA", sheet.readings), "=", count)),
    all(is(fn("ABS", climb(sheet)), ">", sum(reckon(2, "*", fn("N", setup.step)), BINARY)), is(explained, ">", chance)),
    false,
  );
};

// A reading further off the weight's value than this share of it, 1 in 100, is of another weight; own bound, no source.
const SAME_WEIGHT = 100;

export const isOtherWeight = ({ setup }: BalanceSheet, off: Expression): Expression => is(reckon(fn("ABS", off), "*", SAME_WEIGHT), ">", setup.value);

export const bias = ({ working, setup }: BalanceSheet): Call => onceNumbers([working.mean, setup.value], reckon(working.mean, "-", setup.value));

/**
 * Rounds that give a ±. Of two whose scatter is about a display step rounding hides it now and then, both reading alike, and t s / sqrt(n)
 * covers 92 in 100; of three at least 95 (own simulation).
 */
export const FEWEST_FOR_PLUS_MINUS = 3;

/**
 * ± 95 % of how far the mean is off the weight's value: the root of (t s / sqrt(n))^2, of the rounding of readings that are all rounded
 * alike, 2 d sqrt(2 / 12), and of the weight's own ± (GUM, JCGM 100:2008, 5.1.2 and 6.2).
 */
export const biasPlusMinus = (sheet: BalanceSheet): Expression => {
  const { working, setup } = sheet;
  const scatter = reckon(square(reckon(studentFactor(working.count), "*", working.scatter)), "/", working.count);
  const variance = sum(scatter, square(reckon(2, "*", rounding(sheet))), square(fn("N", setup.known)));
  const isTold = is(working.count, ">=", FEWEST_FOR_PLUS_MINUS);
  return when(isTold, onceNumbers([working.mean, working.scatter, setup.value], fn("SQRT", variance)), NOTHING);
};

// A load somewhere between the corners, off by up to half of the largest, rectangular: |largest| / (2 sqrt(3)), squared (EURAMET cg-18,
// 7.1, from memory).
const CORNERS = 12;

/** What run sheets may take as the balance's repeatability, g: the scatter of the rounds and what the corners add. */
export const forRuns = ({ working, largestOff }: BalanceSheet): Expression =>
  onceNumbers([working.scatter], fn("SQRT", sum(square(working.scatter), reckon(square(fn("N", largestOff)), "/", CORNERS))));

/** Of cells with and without numbers the one farthest from 0, with its sign. */
export const farthest = (of: Range): Expression =>
  when(is(fn("COUNT", of), "=", 0), NOTHING, when(is(fn("MAX", of), ">=", reckon(0, "-", fn("MIN", of))), fn("MAX", of), fn("MIN", of)));

/** The centre, weighed before the corners and where possible after them. */
export const centre = ({ corner }: BalanceSheet): Expression => fn("AVERAGE", corner("centre").box, corner("centreAgain").box);

/** Whether the centre read otherwise after the corners than before them: then the zero wandered, and no corner can be judged. */
export const centresDiffer = ({ corner, working }: BalanceSheet): Condition => {
  const [one, other] = [corner("centre").box, corner("centreAgain").box];
  return when(all(isNumber(one), isNumber(other)), is(fn("ABS", reckon(fn("N", one), "-", fn("N", other))), ">", working.explained), false);
};

/** Whether a place is off by more than corners ever are, a hundredth of the load and ten steps (own bound): another load, or a slip. */
export const isOtherLoad = ({ largestOff, setup }: BalanceSheet, boxes: Range): Condition => {
  const off = fn("ABS", fn("N", largestOff));
  return all(is(reckon(off, "*", SAME_WEIGHT), ">", fn("MAX", boxes)), is(off, ">", reckon(10, "*", fn("N", setup.step))));
};

export const hasCentre = ({ corner }: BalanceSheet): Condition => any(isNumber(corner("centre").box), isNumber(corner("centreAgain").box));
