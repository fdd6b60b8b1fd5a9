import { sampleMoments } from "../numerics/sampleMoments";
import { tooFewReplicates } from "../problems/functions/confidenceProblems";
import { roundedTooCoarsely } from "../problems/functions/roundingVerdicts";
import { criticalRangeFactor } from "./criticalRangeFactor";
import { type Rounding, roundingOf } from "./rounding";

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
  /** How the results are rounded. */
  readonly rounding: Rounding;
}

// Sums of decimal readings stray by about this share of the largest; a mean below it is 0.
export const REPLICATE_ROUNDING = 1e-12;

/**
 * Replicate results summed up: mean, median, s = sqrt(sum (x - mean)^2 / (n - 1)), s / |mean|, range, and from ISO 5725-6
 * (from memory) the repeatability limit 2.8 s and the critical range f(n) times the method's standard deviation.
 * @param values at least two results
 * @param repeatabilitySd repeatability standard deviation of the method, from earlier work; the replicates' own cannot
 *   judge them, so without it no critical range is given
 * @param readability display step of the results, in their unit; left out, their own common step
 * @throws NoAnswer for fewer than two results
 */
export function replicateStatistics(values: readonly number[], repeatabilitySd?: number, readability?: number): ReplicateStatistics {
  if (values.length < 2) throw tooFewReplicates();
  const { mean, deviation } = sampleMoments(values);
  const sorted = [...values].sort((a, b) => a - b);
  const [least, most] = [sorted[0] as number, sorted.at(-1) as number];
  const isZero = Math.abs(mean) <= REPLICATE_ROUNDING * Math.max(Math.abs(least), Math.abs(most));
  return {
    count: values.length,
    mean,
    median: median(sorted),
    deviation,
    relativeDeviation: isZero ? undefined : deviation / Math.abs(mean),
    repeatabilityLimit: repeatabilityLimit(repeatabilitySd ?? deviation),
    range: most - least,
    criticalRange: repeatabilitySd === undefined ? undefined : criticalRangeFactor(values.length) * repeatabilitySd,
    rounding: roundingOf(values, readability),
  };
}

function median(sorted: readonly number[]): number {
  const upper = sorted[sorted.length >> 1] as number;
  return sorted.length % 2 === 1 ? upper : ((sorted[sorted.length / 2 - 1] as number) + upper) / 2;
}

// ISO 5725-6, 4.1.4 (from memory): 1.96 times the square root of 2, rounded to one decimal as the standard has it.
export const FACTOR = 2.8;

/** Repeatability limit r = 2.8 s: two results under repeatability differ by more in one case of twenty; in the unit of the results. */
export const repeatabilityLimit = (deviation: number): number => FACTOR * deviation;

// A step read off the results is free of binary rounding, their range is not.
export const STRAY = 1e-9;

/**
 * What the range of the replicates says, in words, after ISO 5725-6 clause 5 (from memory, check your edition). The range of
 * the true values may be a step less or more than that of the rounded ones, so that it is above the critical range for certain
 * only from a step above; then the verdict is wrong in at most one case of twenty, whatever the step.
 */
export function replicateVerdict({
  range,
  criticalRange,
  rounding: { step, isGiven } = { step: 0, isGiven: false },
}: Pick<ReplicateStatistics, "range" | "criticalRange"> & Partial<Pick<ReplicateStatistics, "rounding">>): string {
  if (criticalRange === undefined) return "not judged: give the method's repeatability standard deviation; the replicates' own cannot judge them";
  if (range + (isGiven ? step : 0) <= criticalRange) return "acceptable: the range is within the critical range; report the mean";
  if (range - step <= criticalRange + STRAY * step) return roundedTooCoarsely(step, isGiven);
  return "not acceptable: the range is above the critical range; look for a cause, take more results, or report the median and say so";
}
