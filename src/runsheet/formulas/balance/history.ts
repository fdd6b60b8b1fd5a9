import { all, any, isNumber, NOTHING, onceNumbers, product, square, sum, when, type Condition } from "../../expressions/choices";
import { fixed, fn, is, range, reckon, type Call, type Expression, type Range } from "../../expressions/Expression";
import type { BalanceSheet } from "../../sheet/BalanceSheet";
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

export const hasCentre = ({ corner }: BalanceSheet): Condition => any(isNumber(corner("centre").box), isNumber(corner("centreAgain").box));
