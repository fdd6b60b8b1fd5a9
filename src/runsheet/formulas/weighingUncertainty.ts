import { NOTHING, noNumber, when } from "../expressions/choices";
import { LEFT_OUT, retort, type Call, type Expression } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";

/**
 * Standard uncertainty of one weighing, g: that of READING.U, sqrt(s^2 + 2 d^2 / 12) with the repeatability s and the display
 * step d, where a repeatability not given counts as none. The balance is zeroed before each weighing, so both zero and load
 * are rounded. A weighing corrected by two zeros is known a little better than that, by sqrt(3 / 4), which is not claimed.
 */
export function weighingUncertainty({ settings: { readability, repeatability } }: RunSheet): Call {
  const isZeroed = true;
  const reading = (known: Expression): Call => retort("READING.U", readability, known, LEFT_OUT, isZeroed);
  return when(noNumber(readability), NOTHING, when(noNumber(repeatability), reading(LEFT_OUT), reading(repeatability)));
}
