import { remembered } from "../numerics/remembered";
import { sampleMoments } from "../numerics/sampleMoments";
import { studentTQuantile } from "../numerics/studentTQuantile";
import type { Replicate } from "./countedReplicates";
import { mostGrubbs, reducedGrubbs } from "./grubbsRounded";
import { doubtOf, suspects, tailOf, type OutlierAssessment, type OutlierQuestion, type Rounded } from "./outlierAssessment";

/** Mean and standard deviation beside the assessment they entered, in the unit of the values. */
export interface GrubbsAssessment extends OutlierAssessment {
  readonly mean: number;
  readonly deviation: number;
}

/**
 * Grubbs' statistic for one outlier, G = |suspect - mean| / s with the suspect inside the mean and s, held against its
 * critical value: Grubbs, Technometrics 11 (1969) 1, doi:10.1080/00401706.1969.10490657.
 * G has no unit. It weighs the suspect against the scatter of all values, which ISO 5725-2 prefers to Dixon's ratio (from
 * memory).
 * @throws NoAnswer for fewer than three values, or when all are equal
 */
export function grubbsAssessment(replicates: readonly Replicate[], question: OutlierQuestion): GrubbsAssessment {
  const candidates = suspects(replicates, question.sides);
  const { mean, deviation } = sampleMoments(replicates.map(({ value }) => value));
  const distance = (one: Replicate): number => Math.abs(one.value - mean);
  const suspect = candidates.reduce((farthest, one) => (distance(one) > distance(farthest) ? one : farthest));
  const statistic = distance(suspect) / deviation;
  const critical = grubbsCritical(replicates.length, tailOf(question));
  const isOutlier = statistic > critical;
  const turned = (end: Replicate): number[] => replicates.map(({ value }) => (end.value < mean ? -value : value));
  const rounded: Rounded = { reduced: (end, step) => reducedGrubbs(turned(end), step), most: (end, step) => mostGrubbs(turned(end), step) };
  const doubt = doubtOf(replicates, question.readability, { suspect, isOutlier, critical }, candidates, rounded);
  return { count: replicates.length, suspect, statistic, critical, isOutlier, doubt, mean, deviation };
}

const VALUES_KEPT = 200;

/**
 * Critical value of Grubbs' G for n values: (n-1)/sqrt(n) sqrt(t^2 / (n-2+t^2)), t exceeded with probability tail/n at
 * n-2 degrees of freedom (Grubbs, as above). Computed and not copied, because a widely copied table carries misprints. As in
 * the published tables, an upper bound that is exact wherever two values cannot stand out that far at once.
 * @param n from 3
 * @param tail alpha for one side, alpha/2 for two
 */
export const grubbsCritical = remembered(VALUES_KEPT, (n: number, tail: number): number => {
  const t = studentTQuantile(tail / n, n - 2);
  return ((n - 1) / Math.sqrt(n)) * Math.sqrt(t ** 2 / (n - 2 + t ** 2));
});
