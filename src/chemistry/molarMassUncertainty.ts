import { atomicWeightUncertainty } from "./atomicWeightUncertainty";
import type { Formula } from "./Formula";
import { molarMass } from "./molarMass";

/**
 * Standard uncertainty of a molar mass [g/mol]: u(M)^2 = sum of (n u(A))^2 over the elements. The n atoms of one element share one weight and
 * count n times, not sqrt(n) times; the weights of different elements are independent. Source: GUM (JCGM 100:2008) 5.2; Possolo et al., Pure
 * Appl. Chem. 90 (2018) 395.
 * @throws InputProblem as molarMass
 */
export function molarMassUncertainty(formula: Formula): number {
  molarMass(formula);
  let variance = 0;
  formula.atoms.forEach((count, symbol) => {
    variance += (count * atomicWeightUncertainty(symbol)) ** 2;
  });
  return Math.sqrt(variance);
}
