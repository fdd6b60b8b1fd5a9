import type { CellInput } from "../Input";
import { numberOrWord } from "../number";
import { weighing } from "./weighings";

/** The word that says a run gave none of a product, which reads as 0. */
export const NOTHING_CAUGHT = "none";

/** The mass of a product in grams, or the word "none". A 0 is taken as not weighed: what was not caught would be counted as gas. */
export const productMass = (about: string): CellInput<number> =>
  numberOrWord(about, { ...weighing, advice: `Give grams, or type "${NOTHING_CAUGHT}" if there was none.` }, NOTHING_CAUGHT);
