import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";

// Tables go from 0.1 to 0.001; below a millionth the answer would hang on how normal the farthest tail is.
const LEAST = 1e-6;
// From a half on a test errs more often than a coin; confidence levels (0.9, 0.95, 0.99) lie above.
const BOUND = 1 / 2;

/** The chance of a false alarm that a test accepts, alpha. Percentages and confidence levels are told apart and refused. */
export const significanceLevel = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a significance level",
    advice: "Type 0.05 or 5% for 95 % confidence.",
    zeroIsBlank: true,
    broken: (value) => {
      if (value < 0) return "below zero";
      if (value >= 1) return "not below 1 and looks like a percentage";
      if (value >= BOUND) return `not below ${BOUND} and looks like a confidence level`;
      return value < LEAST ? `below ${LEAST}` : undefined;
    },
  });
