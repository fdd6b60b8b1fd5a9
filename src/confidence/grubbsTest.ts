import { sampleMoments } from "../numerics/sampleMoments";
import type { Replicate } from "./countedReplicates";
import { grubbsCritical } from "./grubbsCritical";
import type { OutlierQuestion } from "./OutlierQuestion";
import type { OutlierTest } from "./OutlierTest";
import { suspects } from "./suspects";
import { tailOf } from "./tailOf";

/** Mean and standard deviation beside the test they entered. */
export interface GrubbsTest extends OutlierTest {
  readonly mean: number;
  readonly deviation: number;
}

/**
 * Grubbs' test for one outlier: G = |suspect - mean| / s.
 * @throws NoAnswer for fewer than three values, or when all are equal
 */
export function grubbsTest(replicates: readonly Replicate[], question: OutlierQuestion): GrubbsTest {
  const candidates = suspects(replicates, question.sides);
  const { mean, deviation } = sampleMoments(replicates.map(({ value }) => value));
  const distance = (one: Replicate): number => Math.abs(one.value - mean);
  const suspect = candidates.reduce((farthest, one) => (distance(one) > distance(farthest) ? one : farthest));
  const statistic = distance(suspect) / deviation;
  const critical = grubbsCritical(replicates.length, tailOf(question));
  return { count: replicates.length, suspect, statistic, critical, isOutlier: statistic > critical, mean, deviation };
}
