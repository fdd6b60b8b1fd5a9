import { moistureAboveLoss } from "../problems/functions/residueProblems";
import { shareSlack } from "../weighing/roundingSlack";
import { weighingsInOrder } from "../weighing/weighingsInOrder";

/**
 * Volatile fraction: share of the sample that left on heating, (before - after) / (before - vessel), between 0 and 1; the
 * ratio of ASTM E872 clause 7.1. Moisture still in the sample is counted in.
 * @param vessel empty vessel, g (0 when the weighings are net)
 * @param before vessel with the sample before heating, g
 * @param after vessel with the residue, cooled, g
 * @throws InputProblem when the weighings are not in the order vessel <= after <= before, vessel < before
 */
export function volatileFraction(vessel: number, before: number, after: number): number {
  weighingsInOrder({ vessel, before, after });
  return (before - after) / (before - vessel);
}

/** Of the sample as it was weighed in, or of its dry part. */
export const VOLATILE_BASES = ["as analysed", "dry"] as const;
export type VolatileBasis = (typeof VOLATILE_BASES)[number];

/**
 * Volatile matter: the loss on heating without air less the moisture. As analysed, loss - moisture, ASTM E872 clause 7.1;
 * dry, the same divided by 1 - moisture, the form of ISO 18123 (from memory). The moisture is a share of its own, as the
 * two are taken from different portions of one sample. Fractions.
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
