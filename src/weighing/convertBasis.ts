import { lessThanWaterHolds, moistureDoesNotConvert, noAshFreeAsh, wholeOrMore } from "../problems/residueProblems";
import { dryGrams, moistureOn, type Basis, type Composition } from "./bases";
import { shareSlack } from "./shareSlack";
import { waterShare } from "./waterShare";

/** What a basis may treat in its own way; "other" stands for whatever moisture and ash only dilute. */
export const BASIS_QUANTITIES = ["hydrogen", "oxygen", "ash", "moisture", "other"] as const;
export type BasisQuantity = (typeof BASIS_QUANTITIES)[number];

/**
 * A mass fraction carried from one basis to another by the factors of ISO 16993 and ISO 1170, table 1. Hydrogen and
 * oxygen as received and as analysed include those of the moisture, as an analyser reads them (ASTM D3180).
 * @param value fraction on the basis `from`
 * @throws InputProblem when a moisture or the ash that a basis rests on is missing, the quantity has no value there, or
 *   the result would be 1 or more
 */
export function convertBasis(value: number, from: Basis, to: Basis, composition: Composition, quantity: BasisQuantity = "other"): number {
  if (quantity === "ash" && (from === "ash-free" || to === "ash-free")) throw noAshFreeAsh();
  if (quantity === "moisture" && from !== to) throw moistureDoesNotConvert(from, to);
  const result = from === to ? value : carried(value, from, to, composition, quantity);
  if (result >= 1 - shareSlack) throw wholeOrMore(value, result, to);
  return result;
}

function carried(value: number, from: Basis, to: Basis, composition: Composition, quantity: BasisQuantity): number {
  const inWater = waterShare(quantity);
  const ofMoisture = inWater * moistureOn(from, composition);
  if (value < ofMoisture - shareSlack) throw lessThanWaterHolds(value, quantity, ofMoisture);
  const perDryGram = Math.max(0, value - ofMoisture) / dryGrams(from, composition);
  return perDryGram * dryGrams(to, composition) + inWater * moistureOn(to, composition);
}
