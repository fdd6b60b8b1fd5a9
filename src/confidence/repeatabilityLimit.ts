// ISO 5725-6, 4.1.4: 1.96 times the square root of 2, rounded to one decimal as the standard has it.
const FACTOR = 2.8;

/** Repeatability limit r = 2.8 s: two results under repeatability differ by more in one case of twenty; in the unit of the results. */
export const repeatabilityLimit = (deviation: number): number => FACTOR * deviation;
