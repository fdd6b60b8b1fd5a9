/** What a 0 among replicates is: a reading that counts, or an empty cell that the host hands over as 0. */
export const ZERO_MEANINGS = ["count", "skip"] as const;
export type ZeroMeaning = (typeof ZERO_MEANINGS)[number];
