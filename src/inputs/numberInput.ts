import { isBlankNumber, readNumber, type NumberRule } from "./scalar";
import type { CellInput } from "./Input";

/** A required input of one number that follows a rule. */
export const numberInput = (about: string, rule: NumberRule): CellInput<number> => ({
  shape: "cell",
  about,
  unit: rule.unit,
  optional: false,
  isBlank: (value) => isBlankNumber(value, rule),
  read: (value, argument) => readNumber(value, { argument }, rule),
});
