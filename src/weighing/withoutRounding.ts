import { roundingSlack } from "./roundingSlack";

const STEPS_PER_GRAM = Math.round(1 / roundingSlack);

/** A difference of readings, g, as decimals give it: 33.893 - 25 is 8.893, not 8.893000000000001. Beyond nine tonnes, as it is. */
export function withoutRounding(grams: number): number {
  const steps = Math.round(grams * STEPS_PER_GRAM);
  return Number.isSafeInteger(steps) ? steps / STEPS_PER_GRAM : grams;
}
