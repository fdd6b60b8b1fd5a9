import { atomicWeight } from "./atomicWeights";
import type { Formula } from "./Formula";

/**
 * Molar mass [g/mol]: M = sum of count times atomic weight over the symbols of a formula. The electrons of a charge are left out, as in
 * printed tables: 0.000 549 g/mol each, and the ions of a weighed salt cancel.
 * Source: definition; weights as atomicWeight.
 * @throws InputProblem naming an element that has no standard atomic weight, under `argument`
 */
export function molarMass(formula: Pick<Formula, "atoms">, argument = "formula"): number {
  let sum = 0;
  formula.atoms.forEach((count, symbol) => {
    sum += count * atomicWeight(symbol, argument);
  });
  return sum;
}
