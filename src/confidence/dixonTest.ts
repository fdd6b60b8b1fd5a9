import { tooManyForDixon } from "../problems/confidenceProblems";
import type { Replicate } from "./countedReplicates";
import { dixonCritical } from "./dixonCritical";
import type { OutlierQuestion } from "./OutlierQuestion";
import type { OutlierTest } from "./OutlierTest";
import { suspects } from "./suspects";
import { tailOf } from "./tailOf";

// Dixon's tables end here, and with more values a second stray hides the first from r10.
const MOST = 30;

/** The suspect's neighbour and the range beside the test they entered. */
export interface DixonTest extends OutlierTest {
  readonly neighbour: number;
  readonly range: number;
}

/**
 * Dixon's test for one outlier with r10: Q = gap between the suspect and its neighbour over the range.
 * @throws NoAnswer for fewer than 3 or more than 30 values, or when all are equal
 */
export function dixonTest(replicates: readonly Replicate[], question: OutlierQuestion): DixonTest {
  const candidates = suspects(replicates, question.sides);
  if (replicates.length > MOST) throw tooManyForDixon(replicates.length, MOST);
  const sorted = replicates.map(({ value }) => value).sort((a, b) => a - b);
  const range = (sorted.at(-1) as number) - (sorted[0] as number);
  const neighbourOf = ({ value }: Replicate): number => (value === sorted[0] ? sorted[1] : sorted.at(-2)) as number;
  const gap = (one: Replicate): number => Math.abs(one.value - neighbourOf(one));
  const suspect = candidates.reduce((farthest, one) => (gap(one) > gap(farthest) ? one : farthest));
  const statistic = gap(suspect) / range;
  const critical = dixonCritical(replicates.length, tailOf(question));
  return { count: replicates.length, suspect, statistic, critical, isOutlier: statistic > critical, neighbour: neighbourOf(suspect), range };
}
