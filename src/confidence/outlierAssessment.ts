import { allValuesEqual, tooFewForOutlier } from "../problems/confidenceProblems";
import type { Replicate } from "./countedReplicates";

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
}

/** One suspect held against its critical value. */
export interface OutlierAssessment {
  readonly count: number;
  /** The value that stands out most on the side looked at; of equals the first given. */
  readonly suspect: Replicate;
  readonly statistic: number;
  readonly critical: number;
  readonly isOutlier: boolean;
}

// Two values lie equally far from their mean, and from each other.
const FEWEST = 3;
// Values worked out in cells differ in their last bits; a spread below this share of the largest is rounding, not scatter.
const ROUNDING = 1e-12;

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
export const tailOf = ({ alpha, sides }: OutlierQuestion): number => (sides === "two" ? alpha / 2 : alpha);

// With so few values the critical values leave room for gross errors only: at n = 3 a value must lie some 30 times farther
// off than the other two lie apart (two-sided 5 %, from the critical value of r10, 0.970).
const FEW = 4;

/** What an assessment says, in words. */
export function outlierVerdict({ count, isOutlier }: Pick<OutlierAssessment, "count" | "isOutlier">): string {
  if (isOutlier) return "outlier: look for a cause; never reject without a cause, and at most one value";
  return count <= FEW ? `no outlier shown, which ${count} values hardly ever can: keep every value` : "no outlier shown: keep every value";
}
