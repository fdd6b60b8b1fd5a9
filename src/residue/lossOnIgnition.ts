import { weighingsInOrder } from "../weighing/weighingsInOrder";

/**
 * Loss on ignition: what a dry sample loses when ignited in air, (before - after) / (before - vessel), a fraction between
 * 0 and 1. Follows from the definition. Per dry gram, so that water left in the sample is not counted as matter burnt.
 * @param vessel empty crucible, g (0 when the weighings are net)
 * @param before crucible with the dry sample, g
 * @param after crucible with what is left, cooled, g
 * @throws InputProblem when the weighings are not in the order vessel <= after <= before, vessel < before
 */
export function lossOnIgnition(vessel: number, before: number, after: number): number {
  weighingsInOrder({ vessel, before, after });
  return (before - after) / (before - vessel);
}
