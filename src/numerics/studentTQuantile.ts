import { bracketedRoot } from "./bracketedRoot";
import { studentTCentral } from "./studentTCentral";

/**
 * The t that a Student t deviate exceeds with probability `tail` (one tail), to at least eight digits for tails from 1e-8.
 * @param tail above 0, at most 0.5
 * @param degrees degrees of freedom, a whole number from 1
 */
export function studentTQuantile(tail: number, degrees: number): number {
  const angle = bracketedRoot((tried) => 1 - studentTCentral(tried, degrees) - 2 * tail, 0, Math.PI / 2);
  return Math.sqrt(degrees) * Math.tan(angle);
}
