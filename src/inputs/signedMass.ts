import { HEAVIEST, tooHeavy } from "./balanceReading";
import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";

/** A mass that may lie either side of zero, such as the reading of an empty pan. 0 is a value, so a blank cell counts as 0. */
export const signedMass = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "g",
    called: "a mass",
    advice: "Give grams, with a minus sign if below zero.",
    zeroIsBlank: false,
    broken: (value) => (value > HEAVIEST ? tooHeavy : value < -HEAVIEST ? `below -${HEAVIEST} g` : undefined),
  });
