import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";
import { belowZero } from "./scalar";

/** The standard uncertainty of one reading, in grams. */
export const standardUncertainty = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "g",
    called: "an uncertainty",
    advice: "Give the standard uncertainty in grams, such as 0.0005.",
    zeroIsBlank: true,
    broken: belowZero,
  });
