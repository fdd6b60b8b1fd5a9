import { chargeOrCount } from "../../../problems/formulaProblems";
import { chargeSign, countDigit, isCapital, isSubscriptDigit } from "../characters";
import { formulaNotes } from "../formulaNotes";
import type { Reading } from "../Reading";
import { readAmount } from "./readAmount";

const DIGIT_ZERO = 0x30;
const DIGIT_NINE = 0x39;
const BRACKET_OPENS = 0x28;
const BRACKET_CLOSES = 0x29;
// Plain counts up to this many digits stay below the largest count.
const PLAIN_DIGITS = 7;

/**
 * Reads the count at the reading's place; 1, with nothing read, where none stands there.
 * @param opening the bracket that it is the count of; undefined for that of a symbol
 * @param first how many symbols stand before what it counts
 * @throws InputProblem
 */
export function readCount(reading: Reading, opening: string | undefined, first: number): number {
  const { text, at: start } = reading;
  let code = text.charCodeAt(start);
  if (isCapital(code) || start >= text.length) return 1;
  let value = 0;
  let index = start;
  // The common case, plain digits before a symbol, a bracket or the end, kept free of strings.
  while (code >= DIGIT_ZERO && code <= DIGIT_NINE) {
    value = value * 10 + code - DIGIT_ZERO;
    code = text.charCodeAt(++index);
  }
  const plainEnd = index === text.length || isCapital(code) || code === BRACKET_OPENS || code === BRACKET_CLOSES;
  if (plainEnd && index === start) return 1;
  if (plainEnd && index - start <= PLAIN_DIGITS && text.charCodeAt(start) !== DIGIT_ZERO) {
    reading.at = index;
    return value;
  }
  const amount = readAmount(reading, start, "count");
  if (amount === undefined) return 1;
  if (chargeSign(text.charAt(amount.end)) !== 0 && !isCountBeforeSign(reading, opening, first, amount.end)) return 1;
  reading.at = amount.end;
  return amount.value;
}

/**
 * Whether the digits at the reading's place, right before a sign, are a count. `[Fe(CN)6]4-`: no. `NH4+`: yes; both with a note.
 * @param opening the bracket that they stand behind; undefined behind a symbol
 * @param first how many symbols stand before that bracket or symbol
 * @param end the index of the sign
 * @throws InputProblem where they can be either: `Ca2+`, `SO42-`
 */
function isCountBeforeSign(reading: Reading, opening: string | undefined, first: number, end: number): boolean {
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
