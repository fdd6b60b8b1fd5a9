import { PassedError } from "../problems/PassedError";
import { BLANK, CellError } from "./CellValue";
import { isNothing } from "./scalar";
import type { CellInput } from "./Input";

/**
 * Whatever the cell holds, undefined for nothing, for a function that answers every slip in words. Only an error cell
 * is refused. A 0 is handed on: whether it can be a value, the function must say.
 */
export const asGiven = (about: string, choices?: readonly string[]): CellInput<number | string | boolean | undefined> => ({
  shape: "cell",
  about,
  unit: "",
  optional: false,
  ...(choices === undefined ? {} : { choices }),
  isBlank: (value) => isNothing(value) || value === 0,
  read: (value, argument) => {
    if (value instanceof CellError) throw new PassedError(value.code, argument);
    return value === BLANK || isNothing(value) ? undefined : value;
  },
});
