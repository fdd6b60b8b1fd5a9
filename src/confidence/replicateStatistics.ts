import { sampleMoments } from "../numerics/sampleMoments";
import { tooFewReplicates } from "../problems/confidenceProblems";
import { repeatabilityLimit } from "./repeatabilityLimit";
import { criticalRangeFactor } from "./criticalRangeFactor";

/** Replicate results summed up, in the unit of the results. */
export interface ReplicateStatistics {
  readonly count: number;
  readonly mean: number;
  readonly median: number;
  readonly deviation: number;
  /** s / |mean|; undefined where the mean is 0 up to rounding. */
  readonly relativeDeviation: number | undefined;
  /** From the method's repeatability standard deviation where given, else from the replicates' own. */
  readonly repeatabilityLimit: number;
  readonly range: number;
  /** Undefined while the method's repeatability standard deviation is not known. */
  readonly criticalRange: number | undefined;
}

// Sums of decimal readings stray by about this share of the largest; a mean below it is 0.
const ROUNDING = 1e-12;

/**
 * Replicate results summed up, with the repeatability limit and critical range of ISO 5725-6 (from memory).
 * @param values at least two results
 * @param repeatabilitySd repeatability standard deviation of the method, from earlier work; the replicates' own cannot
 *   judge them, so without it no critical range is given
 * @throws NoAnswer for fewer than two results
 */
export function replicateStatistics(values: readonly number[], repeatabilitySd?: number): ReplicateStatistics {
  if (values.length < 2) throw tooFewReplicates();
  const { mean, deviation } = sampleMoments(values);
  const sorted = [...values].sort((a, b) => a - b);
  const [least, most] = [sorted[0] as number, sorted.at(-1) as number];
  const isZero = Math.abs(mean) <= ROUNDING * Math.max(Math.abs(least), Math.abs(most));
  return {
    count: values.length,
    mean,
    median: median(sorted),
    deviation,
    relativeDeviation: isZero ? undefined : deviation / Math.abs(mean),
    repeatabilityLimit: repeatabilityLimit(repeatabilitySd ?? deviation),
    range: most - least,
    criticalRange: repeatabilitySd === undefined ? undefined : criticalRangeFactor(values.length) * repeatabilitySd,
  };
}

function median(sorted: readonly number[]): number {
  const upper = sorted[sorted.length >> 1] as number;
  return sorted.length % 2 === 1 ? upper : ((sorted[sorted.length / 2 - 1] as number) + upper) / 2;
}
