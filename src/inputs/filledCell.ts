import { blankInput, type Place } from "../problems/inputProblems";
import { PassedError } from "../problems/PassedError";
import { BLANK, CellError } from "./CellValue";
import type { CellInput } from "./Input";
import { isNothing } from "./number";

/**
 * A required input that is no number. A 0 from the host is a blank cell.
 * @param called what it is, with its article
 * @param advice what to type, one sentence, for a blank cell
 * @param take reads what the cell holds; throws InputProblem when it cannot serve
 */
export const filledCell = <T>(
  about: string,
  called: string,
  advice: string,
  take: (value: number | string | boolean, place: Place) => T,
): CellInput<T> => ({
  shape: "cell",
  about,
  called,
  unit: "",
  optional: false,
  zero: "nothing",
  isBlank: (value) => isNothing(value) || value === 0,
  read: (value, argument) => {
    if (value instanceof CellError) throw new PassedError(value.code, argument);
    if (value === BLANK || isNothing(value) || value === 0) throw blankInput({ argument }, advice);
    return take(value, { argument });
  },
});
