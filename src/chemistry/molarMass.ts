import { atomicWeight } from "./atomicWeights";
import type { Formula } from "./Formula";

/**
 * Molar mass [g/mol]: the sum of count times atomic weight. The electrons of a charge are left out: 0.000 549 g/mol each.
 * @throws InputProblem naming an element that has no standard atomic weight, under `argument`
 */
export function molarMass(formula: Pick<Formula, "atoms">, argument = "formula"): number {
  let sum = 0;
  formula.atoms.forEach((count, symbol) => {
    sum += count * atomicWeight(symbol, argument);
  });
  return sum;
}
