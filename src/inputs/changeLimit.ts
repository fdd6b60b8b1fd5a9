import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";
import { belowZero } from "./scalar";

/** How much a weighing may change and still count as constant. Its unit and its upper bound depend on the criterion. */
export const changeLimit = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a limit",
    advice: "Give a number above 0, or leave the argument out.",
    zeroIsBlank: true,
    broken: belowZero,
  });
