import { InputProblem } from "../InputProblem";
import { plainNumber, SIZE_FIGURES, withUnit } from "../quoted";

const grams = (value: number): string => withUnit(value, "g");
const inShort = (value: number): string => withUnit(value, "g", SIZE_FIGURES);

export const productsAboveFeed = (products: number, feed: number, uncertainty: number | undefined): InputProblem =>
  new InputProblem(
    "feed",
    uncertainty === undefined
      ? `${grams(feed)} is less than the products together, ${grams(products)}`
      : `${grams(feed)} is less than the products together, ${grams(products)}, by more than 2 u, ${inShort(2 * uncertainty)}`,
    uncertainty === undefined ? "Check tares and swapped cells, or give u." : "Check tares, swapped cells and water from outside.",
  );

export const charAboveDryFeed = (char: number, dryFeed: number): InputProblem =>
  new InputProblem(
    "char",
    `${grams(char)} is more than the dry feed, ${grams(dryFeed)}`,
    "Check for swapped cells, a vessel weighed along, and the moisture.",
  );

// Sentences of the ledger's last row.

export const LEDGER_BY_DIFFERENCE =
  "gas by difference: the sum is the feed by construction and proves nothing; the gas holds every leak, every film left in the tube and every error";

export const LEDGER_GAS_NOT_TOLD = "gas by difference, not told from none: char and liquids make up the feed within 2 u";

export const LEDGER_WITHOUT_U = "no verdict without u: give the standard uncertainty of one mass";

export const ledgerCloses = (unaccounted: number): string => `closes within 2 u: ${inShort(unaccounted)} unaccounted`;

export const ledgerOpen = (unaccounted: number): string =>
  `open: ${inShort(unaccounted)} went unweighed, more than 2 u; look for leaks, films in tube and lid, and gas not measured`;

export const lessWaterThanFeed = (short: number): string =>
  `; ${inShort(short)} less water caught than the feed brought: check moisture and receivers`;

// What the vapour was.

const SHARE_FIGURES = 4;

export const nothingLeftAsVapour = (charYield: number): InputProblem =>
  new InputProblem("yield", `${plainNumber(charYield)} leaves nothing for the vapour`, "Give char per g of dry feed, such as 0.3 or 30%.");

export const analysisAboveOne = (argument: string, what: string, sum: number, largest: number): InputProblem =>
  new InputProblem(
    argument,
    `carbon, hydrogen and oxygen of the ${what} sum to ${plainNumber(sum)}, above ${largest}`,
    "Give one dry basis, ash and all.",
  );

export const vapourShort = (element: string, brought: number, kept: number): InputProblem =>
  new InputProblem(
    "yield",
    `the char would hold ${plainNumber(kept, SHARE_FIGURES)} g of ${element}, and a gram of feed brought ${plainNumber(brought, SHARE_FIGURES)}`,
    "Check the yield, swapped analyses and one dry basis.",
  );

export const VAPOUR_HELD = "holds tar, liquids and gas together; the yield carries its error into every figure";

export const outsideFit = (what: string, elements: readonly string[]): string => `${what}: ${elements.join(", ")} outside the heating correlation`;

// Titration.

export const blankAboveVolume = (blank: number, volume: number): InputProblem =>
  new InputProblem("blank", `${withUnit(blank, "mL")} is not below volume, ${withUnit(volume, "mL")}`, "Check for swapped cells.");

export const moreAcidThanSample = (grams: number, sample: number, unit: string): InputProblem =>
  new InputProblem(
    "sample",
    `${withUnit(sample, unit)} cannot hold ${withUnit(grams, "g", SIZE_FIGURES)} of acid`,
    "Check mL and mol/L of the base, and the dilution.",
  );

export const PER_MILLILITRE = "without a density the answer is per mL of sample; 0.05 g/mL is 5 % m/V";

export const AS_ACETIC = "all that took up base is counted as acetic acid: phenols in part, and a dark colour hides the end point (pH 8.2)";
