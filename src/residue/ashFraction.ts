import { ashAndMoistureAboveOne } from "../problems/functions/residueProblems";
import { shareSlack } from "../weighing/roundingSlack";
import { weighingsInOrder } from "../weighing/weighingsInOrder";

/**
 * Ash per gram of sample as weighed, (ash - vessel) / (before - vessel); with the moisture of that sample, per gram of
 * dry sample: the same divided by 1 - moisture. ISO 18122 (from memory), ASTM E1755, D1102. The moisture divides at the
 * end, as the standards print it, so that one weighing of ash serves both bases. Fractions.
 * @param vessel empty dish, g (0 when the weighings are net)
 * @param before dish with the sample, g
 * @param ash dish with the ash, cooled, g
 * @param moisture fraction, wet basis
 * @throws InputProblem when the weighings are not in the order vessel <= ash <= before, vessel < before, or ash and
 *   moisture come to more than the sample
 */
export function ashFraction(vessel: number, before: number, ash: number, moisture = 0): number {
  weighingsInOrder({ vessel, before, ash });
  const share = (ash - vessel) / (before - vessel);
  if (share + moisture > 1 + shareSlack) throw ashAndMoistureAboveOne(share, moisture);
  return Math.min(1, share / (1 - moisture));
}
