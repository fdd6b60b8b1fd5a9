import { chargeSign } from "./chargeSign";
import { isCapital } from "./isCapital";
import { isCountBeforeSign } from "./isCountBeforeSign";
import { readAmount } from "./readAmount";
import type { Reading } from "./Reading";

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
