import { analysisDoesNotClose, nothingTakenUp } from "../../problems/burningProblems";
import { atomicWeight } from "../atomicWeights";
import { analysisOxygen } from "./analysisOxygen";
import type { BurnedGram } from "./BurnedGram";
import { ROUNDING_RESIDUE } from "./roundingResidue";

/** Mass fractions of the dry sample, ash included in the sample. */
export interface DryAnalysis {
  readonly carbon: number;
  readonly hydrogen: number;
  readonly oxygen: number;
  readonly nitrogen: number;
  readonly sulfur: number;
}

// Real analyses do not close: NIST pine (MaCFP matl-db, wood) sums to 0.956, cotton gin waste in Raveendran 1995 to
// 1.037. Beyond a tenth something is missing or on another basis. Common practice, no source.
const SMALLEST_SUM = 0.9;
const LARGEST_SUM = 1.1;

/**
 * One gram of dry sample burned, its composition given as an ultimate analysis.
 * @param ashFraction ash weighed, g per g of dry sample; 0 when none was weighed
 * @throws InputProblem when the fractions and the ash sum outside 0.9 to 1.1, or hold more oxygen than burning needs
 */
export function burnedAnalysis(analysis: DryAnalysis, ashFraction: number): BurnedGram {
  const { carbon, hydrogen, nitrogen, sulfur } = analysis;
  const sum = analysisSum(analysis, ashFraction);
  if (sum < SMALLEST_SUM - ROUNDING_RESIDUE || sum > LARGEST_SUM + ROUNDING_RESIDUE) throw analysisDoesNotClose(sum, SMALLEST_SUM, LARGEST_SUM);
  const oxygenTaken = analysisOxygen(analysis);
  if (oxygenTaken < 0) throw nothingTakenUp("oxygen");
  const oxide = (element: string, atoms: number, oxygens: number): number =>
    (atoms * atomicWeight(element) + oxygens * atomicWeight("O")) / (atoms * atomicWeight(element));
  return {
    oxygenTaken,
    carbonDioxide: carbon * oxide("C", 1, 2),
    water: hydrogen * oxide("H", 2, 1),
    otherGases: nitrogen + sulfur * oxide("S", 1, 2),
    solid: ashFraction,
    notCovered: 1 - sum,
  };
}

/** The fractions and the ash together; 1 when the analysis covers the whole dry sample. */
export const analysisSum = ({ carbon, hydrogen, oxygen, nitrogen, sulfur }: DryAnalysis, ashFraction: number): number =>
  carbon + hydrogen + oxygen + nitrogen + sulfur + ashFraction;
