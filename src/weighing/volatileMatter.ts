import { moistureAboveLoss } from "../problems/residueProblems";
import { shareSlack } from "./shareSlack";
import { volatileFraction } from "./volatileFraction";

/** Of the sample as it was weighed in, or of its dry part. */
export const VOLATILE_BASES = ["as analysed", "dry"] as const;
export type VolatileBasis = (typeof VOLATILE_BASES)[number];

/**
 * Volatile matter: the loss on heating without air less the moisture. As analysed, loss - moisture, ASTM E872 clause 7.1;
 * dry, the same divided by 1 - moisture, the form of ISO 18123 (from memory).
 * @param vessel crucible with its lid, g (0 when the weighings are net)
 * @param before the same with the sample, g
 * @param after the same with the char, cooled, g
 * @param moisture of the sample as weighed in, fraction, wet basis
 * @throws InputProblem when the weighings are not in the order vessel <= after <= before, vessel < before, or the
 *   moisture is more than the loss
 */
export function volatileMatter(vessel: number, before: number, after: number, moisture: number, basis: VolatileBasis = "as analysed"): number {
  const loss = volatileFraction(vessel, before, after);
  if (moisture > loss + shareSlack) throw moistureAboveLoss(moisture, loss);
  const asAnalysed = Math.max(0, loss - moisture);
  return basis === "dry" ? asAnalysed / (1 - moisture) : asAnalysed;
}
