import { analysisTooLarge } from "../../problems/functions/burningProblems";
import { atomicWeight } from "../atomicWeights";
import { oxygenMolarMass } from "./oxygenDemand";
import { ROUNDING_RESIDUE } from "./roundingResidue";

/** Mass fractions on one basis; hydrogen and oxygen without those of moisture. */
export interface UltimateAnalysis {
  readonly carbon: number;
  readonly hydrogen: number;
  readonly oxygen: number;
  readonly nitrogen?: number;
  readonly sulfur?: number;
  readonly chlorine?: number;
}

/** Atoms of hydrogen that one O2 burns, by 2 H2 + O2 = 2 H2O. */
const HYDROGEN_PER_OXYGEN = 4;

/** O2 that one gram of each element takes up, g/g. Chlorine carries hydrogen off as HCl, which saves that much O2. */
export const oxygenFactors = (): Readonly<Record<"carbon" | "hydrogen" | "sulfur" | "chlorine", number>> => ({
  carbon: oxygenMolarMass() / atomicWeight("C"),
  hydrogen: oxygenMolarMass() / (HYDROGEN_PER_OXYGEN * atomicWeight("H")),
  sulfur: oxygenMolarMass() / atomicWeight("S"),
  chlorine: oxygenMolarMass() / (HYDROGEN_PER_OXYGEN * atomicWeight("Cl")),
});

/**
 * Oxygen that complete burning takes up, g O2 per g: nitrogen leaves as N2, sulfur as SO2, chlorine as HCl as far as
 * there is hydrogen for it. Negative when the analysis holds more oxygen than it needs.
 * O2 = 2.664 C + max(0, 7.936 H - 0.226 Cl) + 0.998 S - O, the factors worked out from the atomic weights; the book form 8/3 C + 8 H + S - O
 * rounds them and is up to 0.9 % higher. Source: stoichiometry.
 */
export function analysisOxygen({ carbon, hydrogen, oxygen, sulfur = 0, chlorine = 0 }: UltimateAnalysis): number {
  const factors = oxygenFactors();
  const forHydrogen = Math.max(0, factors.hydrogen * hydrogen - factors.chlorine * chlorine);
  return factors.carbon * carbon + forHydrogen + factors.sulfur * sulfur - oxygen;
}

// Separate analyses may sum a little above one; 2 % above is rounding and scatter, more is a mixed basis.
// Common practice, no source.
export const LARGEST_SUM = 1.02;

/**
 * Oxygen that complete burning takes up, g O2 per g, from an ultimate analysis.
 * @throws InputProblem when the fractions sum to more than 1.02
 */
export function oxygenDemandUltimate(analysis: UltimateAnalysis): number {
  const { carbon, hydrogen, oxygen, nitrogen = 0, sulfur = 0, chlorine = 0 } = analysis;
  const sum = carbon + hydrogen + oxygen + nitrogen + sulfur + chlorine;
  if (sum > LARGEST_SUM + ROUNDING_RESIDUE) throw analysisTooLarge(sum, LARGEST_SUM);
  return analysisOxygen(analysis);
}
