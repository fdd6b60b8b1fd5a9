import { driedInOrder } from "./driedInOrder";

/**
 * Moisture content, dry basis: water lost per gram of dry sample, (moist - dry) / (dry - vessel). May exceed 1.
 * ASTM D4442, EN 322, EN 13183-1.
 * @param vessel empty vessel, g (0 when the weighings are net)
 * @param moist vessel with the moist sample, g
 * @param dry vessel with the dried sample, cooled, g
 * @throws InputProblem when the weighings are not in the order vessel < dry <= moist
 */
export function moistureDryBasis(vessel: number, moist: number, dry: number): number {
  driedInOrder(vessel, moist, dry);
  return (moist - dry) / (dry - vessel);
}
