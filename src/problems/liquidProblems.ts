import { InputProblem } from "./InputProblem";
import { SIZE_FIGURES, withUnit } from "./quoted";

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
