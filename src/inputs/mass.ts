import { numberInput } from "./numberInput";
import { numberOrWord } from "./numberOrWord";
import type { NumberRule } from "./scalar";
import type { CellInput } from "./Input";
import { belowZero } from "./scalar";

/** A weighing in grams. 0 g is what a blank cell looks like, so it is taken as not weighed. */
export const weighing: NumberRule = {
  unit: "g",
  called: "a weighing",
  advice: "Give grams.",
  zeroIsBlank: true,
  broken: belowZero,
};

/** A weighing in grams, above 0. */
export const mass = (about: string): CellInput<number> => numberInput(about, weighing);

/** The word that says the balance was zeroed with the vessel on it, so that every weighing is already net. */
export const TARED = "tared";

const emptyVessel: NumberRule = { ...weighing, advice: `Weigh the empty vessel in grams, or type "${TARED}" if the balance was zeroed with it on.` };

/** The empty vessel in grams, or the word "tared", which reads as 0 g. */
export const vesselMass = (about: string): CellInput<number> => numberOrWord(about, emptyVessel, TARED);
