import { all, any, countWhere, firstOf, isNumber, NOTHING, noNumber, when, type Condition } from "../expressions/choices";
import { fn, is, joined, reckon, type Cell, type Expression } from "../expressions/Expression";
import { gatherWords } from "../words/gatherWords";
import { WORK, type GatheredSheet } from "./GatheredSheet";
import { areAlike, FEWEST, FEWEST_FOR_ONE_APART } from "./rowFormulas";

const { answer, apart, band: bandWords } = gatherWords;
// Decimals of a percent.
const FIGURES = 2;
// 1.4826 MAD estimates the standard deviation of a normal distribution (Iglewicz and Hoaglin 1993, as for z).
const [SCATTER, PER] = [14_826, 10_000] as const;
const PERCENT_BOUNDS = { atLeast: 1, atMost: 100 } as const;

const percent = (share: Expression): Expression => fn("FIXED", reckon(100, "*", fn("N", share)), FIGURES, true);

export const scatterOf = (mad: Expression): Expression => reckon(reckon(SCATTER, "*", mad), "/", PER);

/** What the counted vapour shares come to. */
export function answerSays({ stats: { count, median, mad } }: GatheredSheet): Expression {
  return firstOf(
    [
      [is(count, "=", 0), answer.none],
      [is(count, "<", FEWEST), answer.tooFew(count)],
      [areAlike(fn("N", mad)), answer.alike(percent(median), count)],
    ],
    answer.median(percent(median), percent(scatterOf(fn("N", mad))), count),
  );
}

/** How many stand apart, and how many rows do not count. */
export function apartSays({ stats, runs }: GatheredSheet): Expression {
  const { count, mad } = stats;
  const rows = runs.rows.length;
  const limit = fn("FIXED", stats.beyond, 1, true);
  const said = firstOf(
    [
      [is(count, "<", FEWEST), apart.tooFew],
      [areAlike(fn("N", mad)), apart.alike],
      [is(count, "<", FEWEST_FOR_ONE_APART), apart.threeCannotTell],
      [is(stats.apart, "=", 0), apart.none(limit)],
    ],
    apart.some(stats.apart, limit),
  );
  return joined(said, when(is(count, "<", rows), apart.notCounted(reckon(rows, "-", count), rows), NOTHING));
}

/** Whether an end of the band cannot be a percentage: text, a fraction typed for percent, or more than all. */
const isNoPercent = (end: Cell): Condition =>
  all(is(fn("COUNTA", end), "=", 1), any(noNumber(end), is(fn("N", end), "<", PERCENT_BOUNDS.atLeast), is(fn("N", end), ">", PERCENT_BOUNDS.atMost)));

const cannotBe = ({ band: { from, to } }: GatheredSheet): readonly (readonly [Condition, string])[] => [
  [any(isNoPercent(from), isNoPercent(to)), bandWords.notPercent],
  [all(is(fn("COUNT", from, to), "=", 2), is(fn("N", from), ">", fn("N", to))), bandWords.swapped],
];

/** An end of the band as it counts. */
export const countedEnd = (sheet: GatheredSheet, end: Cell): Expression =>
  firstOf(
    cannotBe(sheet).map(([condition]) => [condition, NOTHING] as const),
    when(isNumber(end), end, NOTHING),
  );

export function bandSays(sheet: GatheredSheet): Expression {
  const { from, to } = sheet.band;
  const outside = sheet.down(WORK.outside);
  return firstOf(
    [[is(fn("COUNTA", from, to), "=", 0), bandWords.invite], ...cannotBe(sheet)],
    bandWords.outside(countWhere(eitherSide(outside)), sheet.stats.count),
  );
}

/** Cell by cell, whether a row lies above or below: text, where nothing is known, is neither. */
const eitherSide = (outside: Expression): Expression => reckon(is(outside, "=", 1), "+", is(outside, "=", -1));
