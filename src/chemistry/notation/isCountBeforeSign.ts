import { chargeOrCount } from "../../problems/formulaProblems";
import { countDigit, isSubscriptDigit } from "./countDigit";
import { formulaNotes } from "./formulaNotes";
import type { Reading } from "./Reading";

/**
 * Whether the digits at the reading's place, right before a sign, are a count. `[Fe(CN)6]4-`: no. `NH4+`: yes; both with a note.
 * @param opening the bracket that they stand behind; undefined behind a symbol
 * @param first how many symbols stand before that bracket or symbol
 * @param end the index of the sign
 * @throws InputProblem where they can be either: `Ca2+`, `SO42-`
 */
export function isCountBeforeSign(reading: Reading, opening: string | undefined, first: number, end: number): boolean {
  const { text, at: start } = reading;
  const digits = text.slice(start, end);
  const sign = text.charAt(end);
  const settled = isSubscriptDigit(text.charCodeAt(start)) || countDigit(text.charCodeAt(end + 1)) >= 0;
  if (settled || reading.depth > 0) return true;
  if (opening === "[" && first === 0 && digits.length === 1) {
    reading.note(formulaNotes.sizeOfCharge(digits));
    return false;
  }
  if (opening !== undefined || first === 0 || digits.length > 1) throw chargeOrCount(reading.spot(start), digits, sign);
  reading.note(formulaNotes.countBeforeCharge(digits, sign));
  return true;
}
