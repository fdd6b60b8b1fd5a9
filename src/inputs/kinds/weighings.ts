import type { CellInput } from "../Input";
import { BELOW_ZERO, numberInput, numberOrWord } from "../number";
import type { Bound, NumberRule } from "../NumberRule";
import { positiveNumber } from "./positiveNumber";

/** A weighing in grams. 0 g is what a blank cell looks like, so it is taken as not weighed. */
export const weighing: NumberRule = {
  unit: "g",
  called: "a weighing",
  advice: "Give grams.",
  zeroIsBlank: true,
  bounds: [BELOW_ZERO],
};

/** A weighing in grams, above 0. */
export const mass = (about: string): CellInput<number> => numberInput(about, weighing);

/** The word that says the balance was zeroed with the vessel on it, so that every weighing is already net. */
export const TARED = "tared";

const emptyVessel: NumberRule = { ...weighing, advice: `Weigh the empty vessel in grams, or type "${TARED}" if the balance was zeroed with it on.` };

/** The empty vessel in grams, or the word "tared", which reads as 0 g. */
export const vesselMass = (about: string): CellInput<number> => numberOrWord(about, emptyVessel, TARED);

// A thousand tonnes in grams: more than any weighbridge carries (common practice, no source), and far from what arithmetic
// cannot hold.
const HEAVIEST = 1e9;

const TOO_HEAVY: Bound = { above: HEAVIEST, says: `above ${HEAVIEST} g, more than any balance weighs` };

const beyondAnyBalance: readonly Bound[] = [TOO_HEAVY, { below: -HEAVIEST, says: `below -${HEAVIEST} g` }];

/** A reading of one balance in grams, above 0 to 1e9, that a correction is to be made to. 0 is a blank cell. */
export const balanceReading = (about: string): CellInput<number> => numberInput(about, { ...weighing, bounds: [BELOW_ZERO, TOO_HEAVY] });

/**
 * A change between two readings of one balance in grams, before - after, either side of zero to 1e9. A 0 is a blank cell: of two
 * blank cells the difference is 0 as well.
 */
export const massLost = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "g",
    called: "a loss",
    advice: "Give grams, before - after.",
    zeroIsBlank: true,
    bounds: beyondAnyBalance,
  });

/** A mass in grams either side of zero, such as the reading of an empty pan, to 1e9. 0 is a value, so a blank cell counts as 0. */
export const signedMass = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "g",
    called: "a mass",
    advice: "Give grams, with a minus sign if below zero.",
    zeroIsBlank: false,
    bounds: beyondAnyBalance,
  });

/** The smallest step a balance displays, in grams, above 0. */
export const readability = (about: string): CellInput<number> =>
  positiveNumber(about, "Give the balance's smallest step in grams, such as 0.001.", "a display step", "g");

/** A figure from a balance's data sheet or test, such as repeatability or linearity, in grams, above 0. */
export const balanceDeviation = (about: string): CellInput<number> => positiveNumber(about, "Give grams, or leave the argument out.", "a mass", "g");

/** How much a weighing may change and still count as constant, above 0. Its unit and its upper bound depend on the criterion. */
export const changeLimit = (about: string): CellInput<number> =>
  positiveNumber(about, "Give a number above 0, or leave the argument out.", "a limit");
