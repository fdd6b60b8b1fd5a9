import { moistureLooksLikePercent } from "../problems/weighingProblems";

export const MOISTURE_BASES = ["wet", "dry"] as const;
export type MoistureBasis = (typeof MOISTURE_BASES)[number];

// The wettest green wood listed is about 2.5 dry basis (sapwood of western redcedar, 249 %: Wood Handbook, table of
// green moisture contents, from memory). Above 4 a number is far more likely a percentage typed without its sign.
const WETTEST_DRY_BASIS = 4;
// 0.8 on the wet basis comes out as 4.000000000000001 in binary, and must find its way back.
const ROUNDING = 1e-12;

/**
 * Moisture content on the other basis: u = w / (1 - w), w = u / (1 + u), with w and u fractions.
 * @param moisture fraction on the basis `from`
 * @throws InputProblem when the moisture is 1 or more on the wet basis, or above 4 on the dry basis
 */
export function convertMoisture(moisture: number, from: MoistureBasis, to: MoistureBasis): number {
  if (from === "wet" ? moisture >= 1 : moisture > WETTEST_DRY_BASIS + ROUNDING) throw moistureLooksLikePercent(moisture, from);
  if (from === to) return moisture;
  return from === "wet" ? moisture / (1 - moisture) : moisture / (1 + moisture);
}
