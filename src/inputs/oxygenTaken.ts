import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";
import { belowZero } from "./scalar";

/** Oxygen that burning takes up. A sample that takes up none needs no air, so 0 is taken as a blank cell. */
export const oxygenTaken = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "g/g",
    called: "a mass of oxygen",
    advice: "Give grams of oxygen per gram of fuel; a fuel that takes up none needs no air.",
    zeroIsBlank: true,
    broken: belowZero,
  });
