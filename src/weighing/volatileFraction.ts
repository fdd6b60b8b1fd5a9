import { weighingsInOrder } from "./weighingsInOrder";

/**
 * Share of the sample that left on heating, (before - after) / (before - vessel), between 0 and 1.
 * @param vessel empty vessel, g (0 when the weighings are net)
 * @param before vessel with the sample before heating, g
 * @param after vessel with the residue, cooled, g
 * @throws InputProblem when the weighings are not in the order vessel <= after <= before, vessel < before
 */
export function volatileFraction(vessel: number, before: number, after: number): number {
  weighingsInOrder({ vessel, before, after });
  return (before - after) / (before - vessel);
}
