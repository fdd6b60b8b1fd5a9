import { numberOrWord } from "./numberOrWord";
import type { CellInput } from "./Input";

/** The word that says a sample leaves no ash, which reads as 0. */
export const NO_ASH = "none";

/**
 * An ash content as a fraction below 1, or the word "none". A 0 is taken as not weighed: ash is weighed last, and what
 * is not yet ash would be counted as carbon.
 */
export const ashShare = (about: string): CellInput<number> =>
  numberOrWord(
    about,
    {
      unit: "",
      called: "an ash content",
      advice: `Type a fraction such as 0.012 or 1.2%, or "${NO_ASH}".`,
      zeroIsBlank: true,
      broken: (value) => (value < 0 ? "below zero" : value >= 1 ? "not below 1 and looks like a percentage" : undefined),
    },
    NO_ASH,
  );
