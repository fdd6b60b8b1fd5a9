import { noReplicates, replicateGap, zeroUnclear } from "../problems/functions/confidenceProblems";

/** What a 0 among replicates is: a reading that counts, or an empty cell that the host hands over as 0. */
export const ZERO_MEANINGS = ["count", "skip"] as const;
export type ZeroMeaning = (typeof ZERO_MEANINGS)[number];

/** One replicate and its row in the cells given, from 1. */
export interface Replicate {
  readonly row: number;
  readonly value: number;
}

/**
 * The replicates that count. Most hosts hand an empty cell over as 0, and 0 may be a real reading (no ash, no change), so
 * a 0 is refused until the person says which it is.
 * @param cells the readings by row, undefined where blank
 * @param zeros "count": a 0 is a reading; "skip": a 0 is an empty cell, and empty cells are passed over
 * @throws InputProblem for the first blank or 0 whose meaning is open, and when nothing is left
 */
export function countedReplicates(cells: readonly (number | undefined)[], zeros?: ZeroMeaning): readonly Replicate[] {
  const counted = cells.flatMap((value, index): Replicate[] => {
    const row = index + 1;
    if (zeros === "skip" && !value) return [];
    if (value === undefined) throw replicateGap(row);
    if (value === 0 && zeros === undefined) throw zeroUnclear(row);
    return [{ row, value }];
  });
  if (counted.length === 0) throw noReplicates();
  return counted;
}
