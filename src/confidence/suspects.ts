import { allValuesEqual, tooFewForOutlier } from "../problems/confidenceProblems";
import type { Replicate } from "./countedReplicates";
import type { Sides } from "./sides";

// Two values lie equally far from their mean, and from each other.
const FEWEST = 3;
// Values worked out in cells differ in their last bits; a spread below this share of the largest is rounding, not scatter.
const ROUNDING = 1e-12;

/**
 * The ends that a test looks at, the smallest, the largest or both, in the order given.
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
