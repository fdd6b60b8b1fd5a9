import { bracketedRoot } from "../numerics/bracketedRoot";
import { gapRatioProbability } from "../numerics/gapRatioProbability";
import { remembered } from "../numerics/remembered";
import { tooManyForDixon } from "../problems/functions/confidenceProblems";
import type { Replicate } from "./countedReplicates";
import { standsClear } from "./rounding";
import { doubtOf, suspects, tailOf, type OutlierAssessment, type OutlierQuestion, type Rounded } from "./outlierAssessment";

/** Dixon's tables end here, and with more values a second stray hides the first from r10. */
export const MOST = 30;

/** The suspect's neighbour and the range beside the assessment they entered, in the unit of the values. */
export interface DixonAssessment extends OutlierAssessment {
  readonly neighbour: number;
  readonly range: number;
}

/**
 * Dixon's ratio r10 for one outlier, Q = gap between the suspect and its neighbour over the range, held against its critical
 * value: Dixon, Ann. Math. Stat. 22 (1951) 68, doi:10.1214/aoms/1177729693.
 * Q has no unit. r10 at every n, where some tables change to r11 and r21 from 8 and 14 values on, so that one quantity is
 * compared whatever the count.
 * @throws NoAnswer for fewer than 3 or more than 30 values, or when all are equal
 */
export function dixonAssessment(replicates: readonly Replicate[], question: OutlierQuestion): DixonAssessment {
  const candidates = suspects(replicates, question.sides);
  if (replicates.length > MOST) throw tooManyForDixon(replicates.length, MOST);
  const sorted = replicates.map(({ value }) => value).sort((a, b) => a - b);
  const range = (sorted.at(-1) as number) - (sorted[0] as number);
  const neighbourOf = ({ value }: Replicate): number => (value === sorted[0] ? sorted[1] : sorted.at(-2)) as number;
  const gap = (one: Replicate): number => Math.abs(one.value - neighbourOf(one));
  const suspect = candidates.reduce((farthest, one) => (gap(one) > gap(farthest) ? one : farthest));
  const statistic = gap(suspect) / range;
  const critical = dixonCritical(replicates.length, tailOf(question));
  const isOutlier = statistic > critical;
  const rounded: Rounded = {
    reduced: (end, step) => reducedDixon(gap(end), range, step),
    most: (end, step) => mostDixon(gap(end), range, step),
  };
  const doubt = doubtOf(replicates, question.readability, { suspect, isOutlier, critical }, candidates, rounded);
  return { count: replicates.length, suspect, statistic, critical, isOutlier, doubt, neighbour: neighbourOf(suspect), range };
}

/**
 * r10 less what rounding to a step may have put into it: half a step off the gap and half a step more range, so that values that
 * agree to a step do not count as equal. 0 for a suspect that does not stand clear of its neighbour.
 */
export const reducedDixon = (gap: number, range: number, step: number): number =>
  standsClear(gap, step) ? (gap - step / 2) / (range + step / 2) : 0;

/**
 * The most that r10 may be when every value stands for any within half a step of it: it grows as the suspect moves out and falls as
 * its neighbour and the far end move after it. The suspect outwards and the neighbour inwards add a
 * step to the gap; the far end towards the suspect keeps the range as it was. 1 where the neighbour may be as low as the far end.
 */
export const mostDixon = (gap: number, range: number, step: number): number => Math.min(1, (gap + step) / range);

const VALUES_KEPT = 200;

/**
 * Critical value of Dixon's r10 for n values: the ratio that n normal deviates exceed with probability `tail`, integrated,
 * because printed tables mix the conventions and stray in their third decimal. Two sides take half of alpha each, as
 * Rorabacher does (Anal. Chem. 63 (1991) 139, doi:10.1021/ac00002a010); below a ratio of 0.5 that is slightly cautious.
 * @param n 3 to 30
 * @param tail alpha for one side, alpha/2 for two
 */
export const dixonCritical = remembered(VALUES_KEPT, (n: number, tail: number): number =>
  bracketedRoot((ratio) => gapRatioProbability(ratio, n) - tail, 0, 1),
);
