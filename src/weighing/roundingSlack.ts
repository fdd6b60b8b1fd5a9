/**
 * The most, in g, by which arithmetic on decimal readings can stray: 0.3 - 0.29 is not quite 0.01 in binary. A
 * nanogram is below the step of every balance and above the rounding of masses up to a tonne.
 */
export const roundingSlack = 1e-9;

/** The most by which arithmetic on shares of 1 can stray in binary: 1 - 0.9 is not quite 0.1. */
export const shareSlack = 1e-12;

const STEPS_PER_GRAM = Math.round(1 / roundingSlack);

/** A difference of readings, g, as decimals give it: 33.893 - 25 is 8.893, not 8.893000000000001. Beyond nine tonnes, as it is. */
export function withoutRounding(grams: number): number {
  const steps = Math.round(grams * STEPS_PER_GRAM);
  return Number.isSafeInteger(steps) ? steps / STEPS_PER_GRAM : grams;
}
