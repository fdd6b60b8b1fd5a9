import { all, any, countWhere, firstOf, isNumber, NOTHING, noNumber, onceNumbers, orNothing, when, type Condition } from "../expressions/choices";
import { cell, fixed, fn, is, joined, range, reckon, type Cell, type Expression } from "../expressions/Expression";
import { gatherWords, markWithBand } from "../words/gatherWords";
import { resultWords } from "../words/resultWords";
import { AT, WORK, type GatheredSheet } from "./GatheredSheet";
import type { GatheredShare, RunRow } from "./RunRow";

/** Fewer give no median absolute deviation worth the name; common practice, no source. */
export const FEWEST = 3;
/** Of three the two that happen to lie close make a third stand apart: beyond 3.5 in 29 of 100 sheets of one population. */
export const FEWEST_FOR_ONE_APART = 4;
/**
 * Modified z-score 0.6745 (x - median) / MAD: B. Iglewicz and D. C. Hoaglin, How to Detect and Handle
 * Outliers, ASQC Basic References in Quality Control 16 (1993). 0.6745 is the upper quartile of the normal distribution, 1.4826 its
 * inverse. In cell formulas whole numbers over a power of ten.
 */
const [Z, PER] = [6745, 10_000] as const;
/**
 * The z, in tenths, that the largest of so many rows of one normal population passes on one sheet in twenty. Iglewicz and Hoaglin's 3.5
 * does so on 17 to 21 of 100 sheets of four or five rows and on 9 of 100 of thirty. Own simulation, 60,000 sheets each; even counts have a median between
 * two rows, and so a larger MAD.
 */
const TENTHS = 10;
const BEYOND_TENTHS = [[4, 69], [5, 79], [6, 56], [7, 59], [8, 49], [9, 51], [10, 46], [11, 47], [13, 45], [15, 43], [19, 42], [29, 40]] as const; // prettier-ignore
const BEYOND_TENTHS_OF_MANY = 38;

/** The z beyond which a row stands apart, by how many are counted. */
export const beyond = (count: Expression): Expression =>
  reckon(
    firstOf(
      BEYOND_TENTHS.map(([upTo, tenths]) => [is(count, "<=", upTo), tenths] as const),
      BEYOND_TENTHS_OF_MANY,
    ),
    "/",
    TENTHS,
  );
/** Shares that differ by less are alike: binary rounding, not scatter. One over this. */
const ALIKE = 1_000_000_000;

const at = (row: number, column: number): Cell => cell(row, column);

/** What another sheet's cell shows, nothing for a blank one, which a bare reference would make 0, or for an error. */
export const shown = (of: Expression): Expression => orNothing(when(is(of, "=", NOTHING), NOTHING, of));

/** What a sample is called; of several that a person gave one name, which of them it is. */
export function nameShown({ down, first }: GatheredSheet, { name, own }: RunRow, row: number): Expression {
  if (own === undefined) return orNothing(name);
  const called = at(row, WORK.name);
  const same = (of: Expression): Expression => countWhere(is(of, "=", called));
  const every = same(down(WORK.name));
  const upToHere = same(range(fixed(at(first, WORK.name)), called));
  const isShared = when(is(called, "=", NOTHING), false, is(every, ">", 1));
  return orNothing(joined(when(isShared, gatherWords.oneOf(upToHere, every), NOTHING), name));
}

/** A share that counts: a number of a run without a mark against it. */
export const countedShare = (row: number, share: GatheredShare): Expression =>
  when(all(is(at(row, AT.trust), "=", resultWords.trusted), isNumber(at(row, AT[share]))), at(row, AT[share]), NOTHING);

/** How far a counted share lies from the median of all, once they are enough. */
export function fromMedian({ median }: GatheredSheet, row: number, share: GatheredShare): Expression {
  const [own, ofAll] = [at(row, WORK[share].counted), fixed(at(median, AT[share]))];
  return onceNumbers([own, ofAll], fn("ABS", reckon(own, "-", ofAll)));
}

/** Whether the counted shares are alike to the last figure. */
export const areAlike = (mad: Expression): Condition => is(reckon(mad, "*", ALIKE), "<", 1);

export function robustZ({ stats }: GatheredSheet, row: number): Expression {
  const own = at(row, WORK.volatile.counted);
  const z = reckon(reckon(Z, "*", reckon(own, "-", stats.median)), "/", reckon(PER, "*", stats.mad));
  return onceNumbers([own, stats.mad], when(areAlike(stats.mad), NOTHING, z));
}

/** 1 above the band, -1 below it, 0 within; nothing without one. */
export function outsideBand({ band }: GatheredSheet, row: number): Expression {
  const percent = reckon(100, "*", fn("N", at(row, WORK.volatile.counted)));
  return firstOf(
    [
      [any(noNumber(at(row, WORK.volatile.counted)), noNumber(band.countedFrom, band.countedTo)), NOTHING],
      [all(isNumber(band.countedFrom), is(percent, "<", band.countedFrom)), -1],
      [all(isNumber(band.countedTo), is(percent, ">", band.countedTo)), 1],
    ],
    0,
  );
}

/** What the row comes to: counted or why not, whether it stands apart, and where it lies beside the band. */
export function markOf(run: RunRow, row: number): Expression {
  const { heading, trust, shares, loss } = run;
  const { marks } = gatherWords;
  const { volatile } = shares;
  const gone = [fn("ISERROR", heading), marks.gone] as const;
  if (loss !== undefined) return firstOf([gone, ...lossMarks(trust, loss, at(row, AT.trust))], marks.lost(percent(loss.share)));
  if (volatile === undefined) return firstOf([gone, [fn("ISERROR", trust), marks.error]], marks.noVapour);
  const [own, z, outside] = [at(row, AT.volatile), at(row, WORK.z), fn("N", at(row, WORK.outside))];
  const plusMinus = fn("N", at(row, AT.plusMinus));
  const within = when(is(fn("N", at(row, WORK.volatile.apart)), "<=", plusMinus), marks.withinPlusMinus, NOTHING);
  const band = firstOf(
    [
      [is(outside, "<", 0), marks.below],
      [is(outside, ">", 0), marks.above],
    ],
    NOTHING,
  );
  const mark = when(is(fn("N", at(row, WORK.isApart)), "=", 1), marks.apart(fn("FIXED", fn("N", z), 1, true), within), marks.counted);
  return firstOf(
    [
      gone,
      [any(fn("ISERROR", trust), fn("ISERROR", volatile)), marks.error],
      [is(own, "=", resultWords.withheld), marks.withheld],
      [noNumber(own), marks.unfinished],
      [noNumber(fixed(at(row, WORK.volatile.counted))), marks.inDoubt],
    ],
    markWithBand(mark, band),
  );
}

const percent = (share: Expression): Expression => fn("FIXED", reckon(100, "*", fn("N", share)), 2, true);

/** Why the loss of a kind without a vapour share is not simply told. */
const lossMarks = (trust: Expression, { share }: NonNullable<RunRow["loss"]>, own: Cell): readonly (readonly [Condition, Expression])[] => [
  [any(fn("ISERROR", trust), fn("ISERROR", share)), gatherWords.marks.error],
  [is(share, "=", resultWords.withheld), gatherWords.marks.lossWithheld],
  [noNumber(share), gatherWords.marks.lossUnfinished],
  [is(is(own, "=", resultWords.trusted), "=", false), gatherWords.marks.lossInDoubt(percent(share))],
];

/** 1 where a row's robust z lies beyond the bound, either way, 0 where it does not; nothing without one. */
export const standsApart = ({ stats }: GatheredSheet, row: number): Expression =>
  onceNumbers(
    [at(row, WORK.z)],
    when(all(is(stats.count, ">=", FEWEST_FOR_ONE_APART), is(fn("ABS", fn("N", at(row, WORK.z))), ">", stats.beyond)), 1, 0),
  );
