import { analysisDoesNotClose, ashTwice, nothingTakenUp } from "../../problems/functions/burningProblems";
import { atomicWeight } from "../atomicWeights";
import type { Formula } from "../Formula";
import { burnProducts } from "./burnProducts";
import { burnReaction } from "./burnReaction";
import { analysisOxygen } from "./oxygenDemandUltimate";
import { ROUNDING_RESIDUE } from "./roundingResidue";

/** Complete open burning of one gram of dry sample, ash included; every mass in g per g of dry sample. */
export interface BurnedGram {
  readonly oxygenTaken: number;
  readonly carbonDioxide: number;
  readonly water: number;
  /** N2, SO2, hydrogen halides, halogens and P4O10 smoke. */
  readonly otherGases: number;
  /** Ash, or the solids that the formula leaves. */
  readonly solid: number;
  /** What the analysis does not account for; negative where it sums to more than the sample. */
  readonly notCovered: number;
}

/**
 * One gram of dry sample burned, its combustible part given as a formula: every figure of burnProducts times (1 - ash), as ash is carried
 * through and takes up nothing.
 * @param ashFraction ash weighed, g per g of dry sample; 0 when none was weighed, and then the formula's own solids are left
 * @throws InputProblem as burnReaction; when ash was weighed and the formula leaves solids too; when the formula
 *   carries more oxygen than it needs
 */
export function burnedFormula(formula: Formula, ashFraction: number): BurnedGram {
  const { oxygen, products } = burnReaction(formula);
  if (oxygen < -ROUNDING_RESIDUE) throw nothingTakenUp("formula");
  const solids = products.filter(({ leaves }) => leaves === "solid").map(({ text }) => text);
  if (ashFraction > 0 && solids[0] !== undefined) throw ashTwice(solids[0]);
  const balance = burnProducts(formula);
  const burnable = 1 - ashFraction;
  const gramsOf = (wanted: (product: string) => boolean): number =>
    burnable * balance.products.filter(({ product }) => wanted(product)).reduce((sum, { grams }) => sum + grams, 0);
  return {
    oxygenTaken: burnable * balance.oxygenTaken,
    carbonDioxide: gramsOf((product) => product === "CO2"),
    water: gramsOf((product) => product === "H2O"),
    otherGases: gramsOf((product) => product !== "CO2" && product !== "H2O" && !solids.includes(product)),
    solid: ashFraction + gramsOf((product) => solids.includes(product)),
    notCovered: 0,
  };
}

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
export const SMALLEST_SUM = 0.9;
export const LARGEST_SUM = 1.1;

/**
 * One gram of dry sample burned, its composition given as an ultimate analysis: CO2 = 3.664 C, H2O = 8.936 H, SO2 = 1.998 S, the factors
 * worked out from the atomic weights. What the fractions and the ash leave open is kept as a figure of its own, not spread over the rest:
 * an analysis that does not close should be seen not to.
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
