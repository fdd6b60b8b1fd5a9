import { InputProblem } from "../problems/InputProblem";
import type { CellInput } from "./Input";

/** The same input, but what is wrong with it is handed over as a value. An error that the cell already shows is still passed on. */
export const orProblem = <T>(input: CellInput<T>): CellInput<T | InputProblem> => ({
  ...input,
  read: (value, argument) => {
    try {
      return input.read(value, argument);
    } catch (thrown) {
      if (thrown instanceof InputProblem) return thrown;
      throw thrown;
    }
  },
});
