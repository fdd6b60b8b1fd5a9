import { nothingWouldStay, productLosesMore } from "../problems/functions/decompositionProblems";

/**
 * Degree of calcination: the share of what the raw material can lose that has left it, from the loss on ignition of the product and of the raw
 * material, both fractions of the mass that was ignited: D = 1 - L (1 - L0) / ((1 - L) L0). Balance over the part that stays, which is 1 - L of
 * the product and 1 - L0 of the raw material. (L0 - L) / L0 forgets that the product is lighter and reads low: 0.886 for 0.933 at 5 % against
 * 43.97 %.
 * @throws InputProblem when the product loses more than the raw material, or the raw material leaves nothing
 */
export function calcinationDegree(productLoss: number, rawLoss: number): number {
  if (rawLoss >= 1) throw nothingWouldStay(rawLoss);
  if (productLoss > rawLoss) throw productLosesMore(productLoss, rawLoss);
  return 1 - (productLoss * (1 - rawLoss)) / ((1 - productLoss) * rawLoss);
}
