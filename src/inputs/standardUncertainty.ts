import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";

/** The standard uncertainty of one reading, in grams. */
export const standardUncertainty = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "g",
    called: "an uncertainty",
    advice: "Give the standard uncertainty in grams, such as 0.0005.",
    zeroIsBlank: true,
    broken: (value) => (value < 0 ? "below zero" : undefined),
  });
