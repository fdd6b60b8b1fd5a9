import { analysisTooLarge } from "../../problems/burningProblems";
import { analysisOxygen, type UltimateAnalysis } from "./analysisOxygen";
import { ROUNDING_RESIDUE } from "./roundingResidue";

// Separate analyses may sum a little above one; 2 % above is rounding and scatter, more is a mixed basis.
// Common practice, no source.
const LARGEST_SUM = 1.02;

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
