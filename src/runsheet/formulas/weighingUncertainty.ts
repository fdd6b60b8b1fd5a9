import { any, NOTHING, noNumber, square, when } from "../expressions/choices";
import { fn, reckon, type Call } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import { areWrong } from "./wrongBoxes";

// 2 d^2 / 12: zero and load are both rounded.
const STEPS_SQUARED = 6;

/**
 * Standard uncertainty of one weighing, g: as READING.U gives it, sqrt(s^2 + 2 d^2 / 12) with the repeatability s and the display step d,
 * but by plain arithmetic, so that it follows changes where the function is not known. A repeatability not given counts as none, what is no
 * number in its place gives nothing. The balance is zeroed before each weighing, so both zero and load are rounded. A weighing corrected by two zeros
 * is known a little better than that, by sqrt(3 / 4), which is not claimed.
 */
export function weighingUncertainty({ settings: { readability, repeatability } }: RunSheet): Call {
  // SUM of the one cell, not N: Gnumeric gives an error for N of a blank cell to a power.
  const rounding = reckon(square(readability), "/", STEPS_SQUARED);
  const known = fn("SQRT", reckon(square(fn("SUM", repeatability)), "+", rounding));
  const isUnknown = any(noNumber(readability), areWrong([readability], "above 0"), areWrong([repeatability], "0"));
  return when(isUnknown, NOTHING, known);
}
