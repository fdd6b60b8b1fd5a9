import { roundingSlack } from "../weighing/roundingSlack";

// The decimals of roundingSlack: below a nanogram everything is binary rounding.
const MOST_DECIMALS = 9;

/**
 * The step of the last decimal that any of the weighings shows, g: 0.01 for 10, 9.2 and 8.95. A balance steps by this or
 * by a small multiple of it, so it is the least noise to reckon with where the readability is not known.
 */
export function lastDigitStep(weights: readonly number[]): number {
  let decimals = 0;
  for (const grams of weights) {
    while (decimals < MOST_DECIMALS && Math.abs(grams - Number(grams.toFixed(decimals))) > roundingSlack / 2) decimals++;
  }
  return 1 / 10 ** decimals;
}
