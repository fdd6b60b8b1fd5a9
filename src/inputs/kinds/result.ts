import type { CellInput } from "../Input";
import { numberInput } from "../number";

/** A result of any kind and sign. 0 is a value, so a blank cell counts as 0. */
export const resultValue = (about: string): CellInput<number> =>
  numberInput(about, { unit: "", called: "a result", advice: "Give a number.", zeroIsBlank: false });
