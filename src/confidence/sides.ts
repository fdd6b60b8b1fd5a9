/**
 * Which end an outlier test looks at: "two" takes whichever end stands out and counts both chances; "largest" and
 * "smallest" are one-sided, for an end chosen before the values were seen.
 */
export const SIDES = ["two", "largest", "smallest"] as const;
export type Sides = (typeof SIDES)[number];
