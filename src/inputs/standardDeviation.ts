import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";
import { belowZero } from "./scalar";

/** A standard deviation in the unit of the values it is for. */
export const standardDeviation = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a standard deviation",
    advice: "Give a number above 0 in the unit of the values, or leave the argument out.",
    zeroIsBlank: true,
    broken: belowZero,
  });
