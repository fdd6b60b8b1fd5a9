import { bracketedRoot } from "./bracketedRoot";
import { incompleteBeta } from "./incompleteBeta";

/**
 * Probability that a variance ratio F is exceeded by chance: I_x(within / 2, between / 2) with x = within / (within + between F), Abramowitz
 * and Stegun (1964) 26.6.2. Degrees of freedom need not be whole.
 */
export const varianceRatioTail = (ratio: number, between: number, within: number): number =>
  incompleteBeta(within / (within + between * ratio), within / 2, between / 2);

/**
 * The t that Student's t exceeds with probability `tail` (one tail) for any degrees of freedom, which Welch's are seldom whole; where they are,
 * studentTQuantile sums exactly. Solved for the angle whose tangent is t / sqrt(degrees).
 * @param tail above 0, below 0.5
 */
export function studentTOfAnyDegrees(tail: number, degrees: number): number {
  const angle = bracketedRoot((tried) => incompleteBeta(Math.cos(tried) ** 2, degrees / 2, 1 / 2) - 2 * tail, 0, Math.PI / 2);
  return Math.sqrt(degrees) * Math.tan(angle);
}
