import { allValuesEqual, tooFewForOutlier } from "../problems/functions/confidenceProblems";
import { roundedTooCoarsely } from "../problems/functions/roundingVerdicts";
import type { Replicate } from "./countedReplicates";
import { type Rounding, roundingOf } from "./rounding";

/**
 * Which end is looked at: "two" takes whichever end stands out and counts both chances; "largest" and "smallest" are
 * one-sided, for an end chosen before the values were seen.
 */
export const SIDES = ["two", "largest", "smallest"] as const;
export type Sides = (typeof SIDES)[number];

/** How an outlier is asked for. */
export interface OutlierQuestion {
  /** Chance of calling a value an outlier when all come from one normal distribution, above 0 and below 0.5. */
  readonly alpha: number;
  readonly sides: Sides;
  /** Display step of the values, in their unit; left out, the values' common step counts where they would show an outlier. */
  readonly readability?: number | undefined;
}

/** One suspect held against its critical value. */
export interface OutlierAssessment {
  readonly count: number;
  /** The value that stands out most on the side looked at; of equals the first given. */
  readonly suspect: Replicate;
  readonly statistic: number;
  readonly critical: number;
  /** Whether the statistic of the values as shown is above its critical value. */
  readonly isOutlier: boolean;
  /** The rounding that leaves open whether that of the true values is; undefined where it does not. */
  readonly doubt: Rounding | undefined;
}

/** Two values lie equally far from their mean, and from each other. */
export const FEWEST = 3;
/** Values worked out in cells differ in their last bits; a spread below this share of the largest is rounding, not scatter. */
export const ROUNDING = 1e-12;

/**
 * The ends that are looked at, the smallest, the largest or both, in the order given, so that of two that stand out alike
 * the first given is named.
 * @throws NoAnswer for fewer than three values, or when all are equal up to rounding
 */
export function suspects(replicates: readonly Replicate[], sides: Sides): readonly Replicate[] {
  if (replicates.length < FEWEST) throw tooFewForOutlier(replicates.length, FEWEST);
  const smallest = replicates.reduce((least, one) => (one.value < least.value ? one : least));
  const largest = replicates.reduce((most, one) => (one.value > most.value ? one : most));
  if (largest.value - smallest.value <= ROUNDING * Math.max(Math.abs(largest.value), Math.abs(smallest.value)))
    throw allValuesEqual(replicates.length);
  if (sides === "two") return smallest.row < largest.row ? [smallest, largest] : [largest, smallest];
  return [sides === "largest" ? largest : smallest];
}

/** The chance in the tail on one side: half of alpha when either end may be the outlier. */
export const tailOf = ({ alpha, sides }: Pick<OutlierQuestion, "alpha" | "sides">): number => (sides === "two" ? alpha / 2 : alpha);

/**
 * With so few values the critical values leave room for gross errors only: at n = 3 a value must lie some 30 times farther
 * off than the other two lie apart (two-sided 5 %, from the critical value of r10, 0.970).
 */
export const FEW = 4;

/** What rounding to a step leaves of the statistic of an end of the values. */
export interface Rounded {
  /** Less what rounding may have put into it. */
  readonly reduced: (suspect: Replicate, step: number) => number;
  /** The most it may be when every value stands for any within half a step of it. */
  readonly most: (end: Replicate, step: number) => number;
}

/**
 * The rounding that leaves the verdict open. An outlier is shown only where the reduced statistic is above the critical value
 * too. Without that, rounding makes outliers of good values in 20 to 60 % of samples where the step is as large as the scatter:
 * tied values have no scatter of their own. With it the share of false outliers keeps alpha; simulated for 3 to 30 values, scatters
 * from 0.05 to 20 steps, the quantity at any place within its step, alpha from 0.001 to 0.4, one-sided and two-sided: at most 0.75
 * alpha for Grubbs' statistic and 0.6 alpha for Dixon's up to a scatter of 3 steps, rising to alpha on finer displays. A step that
 * is a multiple of the display's only lowers it. With a
 * readability given, no outlier is shown only where no set of true values within half a step has one; the values' own
 * common step, which may be coarser than the display's, is held against outliers alone.
 * @param ends those looked at
 */
export function doubtOf(
  replicates: readonly Replicate[],
  readability: number | undefined,
  { suspect, isOutlier, critical }: Pick<OutlierAssessment, "suspect" | "isOutlier" | "critical">,
  ends: readonly Replicate[],
  { reduced, most }: Rounded,
): Rounding | undefined {
  const rounding = roundingOf(
    replicates.map(({ value }) => value),
    readability,
  );
  const { step, isGiven } = rounding;
  if (step === 0 || (!isOutlier && !isGiven)) return undefined;
  const isOpen = isOutlier ? reduced(suspect, step) <= critical : ends.some((end) => most(end, step) > critical);
  return isOpen ? rounding : undefined;
}

/** What an assessment says, in words. */
export function outlierVerdict({
  count,
  isOutlier,
  doubt,
}: Pick<OutlierAssessment, "count" | "isOutlier"> & { readonly doubt?: Rounding | undefined }): string {
  if (doubt !== undefined) return roundedTooCoarsely(doubt.step, doubt.isGiven);
  if (isOutlier) return "outlier: look for a cause; never reject without a cause, and at most one value";
  return count <= FEW ? `no outlier shown, which ${count} values hardly ever can: keep every value` : "no outlier shown: keep every value";
}
