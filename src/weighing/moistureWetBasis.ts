import { driedInOrder } from "./driedInOrder";

/**
 * Moisture content, wet basis: water lost per gram of moist sample, (moist - dry) / (moist - vessel), from 0 to below 1.
 * ISO 18134-3, ASTM E871.
 * @param vessel empty vessel, g (0 when the weighings are net)
 * @param moist vessel with the moist sample, g
 * @param dry vessel with the dried sample, cooled, g
 * @throws InputProblem when the weighings are not in the order vessel < dry <= moist
 */
export function moistureWetBasis(vessel: number, moist: number, dry: number): number {
  driedInOrder(vessel, moist, dry);
  return (moist - dry) / (moist - vessel);
}
