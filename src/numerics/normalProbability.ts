// Beyond this the tail is below 1e-18, less than the rounding of 1.
const FARTHEST = 9;

/**
 * Probability that a standard normal deviate is at most x, to about 1e-15 absolute. The tail itself loses relative
 * accuracy far out: a probability of 1e-10 has about five good digits.
 * Power series with terms of one sign, so nothing cancels inside it: Abramowitz and Stegun, Handbook of Mathematical
 * Functions (1964), 26.2.11; Marsaglia, J. Stat. Software 11 (2004) 4, doi:10.18637/jss.v011.i04.
 */
export function normalProbability(x: number): number {
  if (x < -FARTHEST) return 0;
  if (x > FARTHEST) return 1;
  const square = x * x;
  let term = x;
  let sum = x;
  let before = NaN;
  for (let odd = 3; sum !== before; odd += 2) {
    before = sum;
    term *= square / odd;
    sum += term;
  }
  return 1 / 2 + normalDensity(x) * sum;
}

/** Density of the standard normal distribution at x. */
export const normalDensity = (x: number): number => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
