import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";
import type { NumberRule } from "./scalar";
import { belowZero } from "./scalar";

const rule: NumberRule = {
  unit: "",
  called: "a time",
  advice: "Give minutes or clock times, the same for all three.",
  zeroIsBlank: false,
  broken: belowZero,
};

/** When the first of some readings was taken, where only shares of a span count: any unit. 0 is a value, and so is a blank cell. */
export const startTime = (about: string): CellInput<number> => numberInput(about, rule);

/** The same for a later reading, which cannot be at 0, so that 0 is a blank cell. */
export const laterTime = (about: string): CellInput<number> => numberInput(about, { ...rule, zeroIsBlank: true });
