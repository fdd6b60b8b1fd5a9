import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";
import { belowZero } from "./scalar";

/** The smallest step a balance displays, in grams. */
export const readability = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "g",
    called: "a display step",
    advice: "Give the balance's smallest step in grams, such as 0.001.",
    zeroIsBlank: true,
    broken: belowZero,
  });
