import fc from "fast-check";

/** Whole milligrams as a balance shows them, in g. */
export const grams = (fewest: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: fewest, max: most }).map((milligrams) => milligrams / 1000);

export const between = (least: number, most: number): fc.Arbitrary<number> => fc.double({ min: least, max: most, noNaN: true });

/** Sums of readings in whole milligrams, free of the rounding that adding them leaves. */
export const milligrams = (sum: number): number => Math.round(1000 * sum) / 1000;
