import { atomicWeight } from "../atomicWeights";
import type { Formula } from "../Formula";
import { molarMass } from "../molarMass";
import { burnableAtoms } from "./burnableAtoms";
import { COMBUSTION, oxygenPerMole, type EndsAs } from "./oxygenPerMole";

/** Molar mass of O2, g/mol. */
export const oxygenMolarMass = (): number => 2 * atomicWeight("O");

/**
 * Oxygen that complete burning takes up, g O2 per g; negative when the formula carries more oxygen than it needs.
 * @throws InputProblem for a charged formula, an element without a settled end product, or unsettled halogen
 */
export function oxygenDemand(formula: Formula, endsAs: EndsAs = COMBUSTION): number {
  return (oxygenPerMole(burnableAtoms(formula), endsAs) * oxygenMolarMass()) / molarMass(formula);
}
