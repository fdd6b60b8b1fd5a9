import { lessThanWaterHolds, moistureDoesNotConvert, neededForBasis, noAshFreeAsh, wholeOrMore } from "../problems/functions/residueProblems";
import { shareSlack } from "../weighing/roundingSlack";

/** As received from the field, as it stood when analysed, without moisture, without moisture and ash. */
export const BASES = ["as received", "as analysed", "dry", "ash-free"] as const;
export type Basis = (typeof BASES)[number];

/** What tells the bases apart, fractions: the two moistures on the wet basis, the ash on the dry basis. */
export interface Composition {
  readonly moistureReceived?: number | undefined;
  readonly moistureAnalysis?: number | undefined;
  readonly ash?: number | undefined;
}

/** What a basis may treat in its own way; "other" stands for whatever moisture and ash only dilute. */
export const BASIS_QUANTITIES = ["hydrogen", "oxygen", "ash", "moisture", "other"] as const;
export type BasisQuantity = (typeof BASIS_QUANTITIES)[number];

/**
 * A mass fraction carried from one basis to another: (value - e M1) / d1 x d2 + e M2, where M1 and M2 are the moistures
 * of the two bases, d1 and d2 their dry grams (dryGrams) and e the element's share of water (waterShare), 0 for all but
 * hydrogen and oxygen. By way of the dry sample every pair of the table of factors in ISO 16993 (from memory) and
 * ISO 1170, table 1, follows from four numbers. Hydrogen and oxygen as received and as analysed include those of the
 * moisture, as an analyser reads them (ASTM D3180).
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

const MOISTURE_ADVICE = `Give the moisture as a fraction; a sample without any is "dry".`;

/**
 * Grams of water in a gram of sample on this basis.
 * @throws InputProblem when the moisture of that basis is missing
 */
export function moistureOn(basis: Basis, { moistureReceived, moistureAnalysis }: Composition): number {
  if (basis === "as received") return moistureReceived ?? missing("moistureReceived", basis, MOISTURE_ADVICE);
  if (basis === "as analysed") return moistureAnalysis ?? missing("moistureAnalysis", basis, MOISTURE_ADVICE);
  return 0;
}

/**
 * Grams of dry sample that belong to a gram on this basis: 1 - moisture where it holds moisture, 1 / (1 - ash) where the
 * ash has been left out.
 * @throws InputProblem when the moisture or ash of that basis is missing
 */
export function dryGrams(basis: Basis, composition: Composition): number {
  if (basis !== "ash-free") return 1 - moistureOn(basis, composition);
  return 1 / (1 - (composition.ash ?? missing("ash", basis, `Give the dry-basis ash as a fraction, or "none".`)));
}

function missing(argument: string, basis: Basis, advice: string): never {
  throw neededForBasis(argument, basis, advice);
}

// CIAAW 2021, abridged standard atomic weights.
const HYDROGEN = 1.008;
const OXYGEN = 15.999;
const WATER = 2 * HYDROGEN + OXYGEN;

/** The mass fraction of water that is this element: 0.1119 hydrogen (ASTM D3180), 0.8881 oxygen, 0 for all else. */
export const waterShare = (quantity: string): number =>
  quantity === "hydrogen" ? (2 * HYDROGEN) / WATER : quantity === "oxygen" ? OXYGEN / WATER : 0;
