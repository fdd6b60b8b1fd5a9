import { sharesAboveOne } from "../problems/residueProblems";
import { shareSlack } from "./shareSlack";

/**
 * Fixed carbon by difference, 1 - (moisture + volatile + ash), all on one basis; on the dry basis the moisture is 0.
 * ASTM D3172.
 * @param moisture, volatile, ash fractions of the same sample
 * @throws InputProblem when they come to more than 1: burnt char, mixed bases, or moisture subtracted twice
 */
export function fixedCarbon(moisture: number, volatile: number, ash: number): number {
  const rest = 1 - (moisture + volatile + ash);
  if (rest < -shareSlack) throw sharesAboveOne(moisture, volatile, ash);
  return Math.max(0, rest);
}
