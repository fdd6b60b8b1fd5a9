import { moistureLooksLikePercent } from "../problems/functions/weighingProblems";
import { shareSlack } from "../weighing/roundingSlack";
import { driedInOrder } from "../weighing/weighingsInOrder";

/**
 * Moisture content, wet basis: water lost per gram of moist sample, w = (moist - dry) / (moist - vessel), a fraction from
 * 0 to below 1. ISO 18134-3, ASTM E871. The basis of fuels: it says what part of what was bought is water.
 * @param vessel empty vessel, g (0 when the weighings are net)
 * @param moist vessel with the moist sample, g
 * @param dry vessel with the dried sample, cooled, g
 * @throws InputProblem when the weighings are not in the order vessel < dry <= moist
 */
export function moistureWetBasis(vessel: number, moist: number, dry: number): number {
  driedInOrder(vessel, moist, dry);
  return (moist - dry) / (moist - vessel);
}

/**
 * Moisture content, dry basis: water lost per gram of dry sample, u = (moist - dry) / (dry - vessel), a fraction that may
 * exceed 1. ASTM D4442, EN 322, EN 13183-1. The basis of wood and soil: its divisor does not change while water leaves.
 * @param vessel empty vessel, g (0 when the weighings are net)
 * @param moist vessel with the moist sample, g
 * @param dry vessel with the dried sample, cooled, g
 * @throws InputProblem when the weighings are not in the order vessel < dry <= moist
 */
export function moistureDryBasis(vessel: number, moist: number, dry: number): number {
  driedInOrder(vessel, moist, dry);
  return (moist - dry) / (dry - vessel);
}

export const MOISTURE_BASES = ["wet", "dry"] as const;
export type MoistureBasis = (typeof MOISTURE_BASES)[number];

// The wettest green wood listed is about 2.5 dry basis (sapwood of western redcedar, 249 %: Wood Handbook, table of
// green moisture contents, from memory). What is wetter than 4 is fruit, sludge or peat, or a percentage typed without its sign.
const WETTEST_WOOD = 4;
// 2 % of solids. Cucumber and lettuce hold 95 to 96 % of water, 20 to 22 dry basis (USDA FoodData Central, from memory), Sphagnum peat
// up to about 25, thickened sludge 92 to 98 % (from memory); beyond that is a liquid, and percentages of green wood begin.
/** The wettest that a moisture on the dry basis may be. */
export const WETTEST_DRY_BASIS = 49;

/** True for a moisture on the dry basis that no wood has, so that a reader should be told how wet it is. */
export const isWetterThanWood = (moisture: number): boolean => moisture > WETTEST_WOOD + shareSlack;

/**
 * Moisture content on the other basis: u = w / (1 - w), w = u / (1 + u), with w and u fractions; both follow from the two
 * definitions, the loss of one being the loss of the other.
 * @param moisture fraction on the basis `from`
 * @throws InputProblem when the moisture is 1 or more on the wet basis, or above 49 on the dry basis
 */
export function convertMoisture(moisture: number, from: MoistureBasis, to: MoistureBasis): number {
  // 0.98 on the wet basis comes out as 48.99999999999996 in binary, 0.8 as 4.000000000000001: what is equal must find its way back.
  if (from === "wet" ? moisture >= 1 : moisture > WETTEST_DRY_BASIS + shareSlack) throw moistureLooksLikePercent(moisture, from);
  if (from === to) return moisture;
  return from === "wet" ? moisture / (1 - moisture) : moisture / (1 + moisture);
}
