import { sharesAboveOne } from "../problems/functions/residueProblems";
import { shareSlack } from "../weighing/roundingSlack";

/**
 * Fixed carbon by difference, 1 - (moisture + volatile + ash), all on one basis; on the dry basis the moisture is 0.
 * ASTM D3172. No weighing gives it: it carries the errors of the other three, so more than the whole is refused.
 * @param moisture, volatile, ash fractions of the same sample
 * @returns fraction, 0 where the three come to 1
 * @throws InputProblem when they come to more than 1: burnt char, mixed bases, or moisture subtracted twice
 */
export function fixedCarbon(moisture: number, volatile: number, ash: number): number {
  const rest = 1 - (moisture + volatile + ash);
  if (rest < -shareSlack) throw sharesAboveOne(moisture, volatile, ash);
  return Math.max(0, rest);
}
