import { normalProbability } from "./normalProbability";

// Steps of the two trapezoidal sums and where they end. Against steps an eighth as wide the probability moves by less
// than 1e-12 up to n = 15 and 2e-9 at n = 30; what lies beyond the ends is smaller still.
const CENTRE_STEP = 1 / 4;
const FARTHEST_CENTRE = 6;
const SPREAD_STEP = 1 / 8;
const LEAST_SPREAD = -3; // exponent: a spread of 1e-10 standard deviations
const MOST_SPREAD = 2.75; // exponent: a spread of 14 standard deviations

/**
 * Probability that, of n standard normal deviates, the gap between the largest and its neighbour is more than
 * `ratio` of the whole range: Dixon's r10 (Ann. Math. Stat. 22 (1951) 68, doi:10.1214/aoms/1177729693).
 * Given the smallest a and the largest a + v, the ratio is exceeded when all others lie below a + v - ratio v:
 * n (n-1) times the double integral of density(a) density(a+v) (P(a + v - ratio v) - P(a))^(n-2).
 * @param ratio 0 to 1
 * @param n a whole number from 3 to 30
 */
export function gapRatioProbability(ratio: number, n: number): number {
  let sum = 0;
  for (let exponent = LEAST_SPREAD; exponent <= MOST_SPREAD; exponent += SPREAD_STEP) {
    // Double-exponential change of variable from the half line: Takahasi and Mori, Publ. RIMS 9 (1974) 721.
    const spread = Math.exp(exponent - Math.exp(-exponent));
    const weight = Math.exp((-spread * spread) / 4) * spread * (1 + Math.exp(-exponent));
    sum += weight * overCentres(spread, ratio, n);
  }
  return ((n * (n - 1)) / (2 * Math.PI)) * CENTRE_STEP * SPREAD_STEP * sum;
}

/** The inner sum, over the middle between the smallest and the largest. */
function overCentres(spread: number, ratio: number, n: number): number {
  let sum = 0;
  for (let centre = -FARTHEST_CENTRE; centre <= FARTHEST_CENTRE; centre += CENTRE_STEP) {
    const smallest = centre - spread / 2;
    const others = normalProbability(smallest + spread * (1 - ratio)) - normalProbability(smallest);
    sum += Math.exp(-centre * centre) * others ** (n - 2);
  }
  return sum;
}
