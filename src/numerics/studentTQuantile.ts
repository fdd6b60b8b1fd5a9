import { bracketedRoot } from "./bracketedRoot";

/**
 * The t that a Student t deviate exceeds with probability `tail` (one tail), to at least eight digits for tails from 1e-8.
 * Solved for the angle whose tangent is t / sqrt(degrees), which has a bracket where t has none.
 * @param tail above 0, at most 0.5
 * @param degrees degrees of freedom, a whole number from 1
 */
export function studentTQuantile(tail: number, degrees: number): number {
  const angle = bracketedRoot((tried) => 1 - studentTCentral(tried, degrees) - 2 * tail, 0, Math.PI / 2);
  return Math.sqrt(degrees) * Math.tan(angle);
}

/**
 * Probability that a Student t deviate lies between -t and t, given as the angle whose tangent is t / sqrt(degrees).
 * Exact finite sum for whole degrees of freedom: Abramowitz and Stegun, Handbook of Mathematical Functions (1964),
 * 26.7.3 (odd) and 26.7.4 (even).
 * @param angle 0 to pi/2
 * @param degrees degrees of freedom, a whole number from 1
 */
export function studentTCentral(angle: number, degrees: number): number {
  const odd = degrees % 2 === 1;
  const sine = Math.sin(angle);
  const cosine = Math.cos(angle);
  let term = odd ? cosine : 1;
  let sum = degrees === 1 ? 0 : term;
  for (let power = odd ? 3 : 2; power <= degrees - 2; power += 2) {
    term *= ((power - 1) / power) * cosine * cosine;
    sum += term;
  }
  return odd ? (2 / Math.PI) * (angle + sine * sum) : sine * sum;
}
