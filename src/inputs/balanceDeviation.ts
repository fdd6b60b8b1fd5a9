import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";
import { belowZero } from "./scalar";

/** A figure from a balance's data sheet or test, such as repeatability or linearity, in grams. */
export const balanceDeviation = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "g",
    called: "a mass",
    advice: "Give grams, or leave the argument out.",
    zeroIsBlank: true,
    broken: belowZero,
  });
