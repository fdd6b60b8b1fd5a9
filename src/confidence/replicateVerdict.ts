import type { ReplicateStatistics } from "./replicateStatistics";

/** What the range of the replicates says, in words, after ISO 5725-6 clause 5 (from memory, check your edition). */
export function replicateVerdict({ range, criticalRange }: Pick<ReplicateStatistics, "range" | "criticalRange">): string {
  if (criticalRange === undefined) return "not judged: give the method's repeatability standard deviation; the replicates' own cannot judge them";
  if (range <= criticalRange) return "acceptable: the range is within the critical range; report the mean";
  return "not acceptable: the range is above the critical range; look for a cause, take more results, or report the median and say so";
}
