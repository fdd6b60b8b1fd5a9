import { chargeOrCount } from "../../../problems/functions/formulaProblems";
import { chargeSign, countDigit, isCapital, isSubscriptDigit } from "../characters";
import { formulaNotes } from "../formulaNotes";
import type { Reading } from "../Reading";
import { isKnownIon, withCount } from "./knownIons";
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
  if (chargeSign(text.charAt(amount.end)) !== 0) {
    const digits = digitsOfCount(reading, opening, first, amount.end);
    if (digits === 0) return 1;
    reading.at = start + digits;
    return digits < amount.end - start ? Number(text.slice(start, reading.at)) : amount.value;
  }
  reading.at = amount.end;
  return amount.value;
}

/**
 * How many of the digits at the reading's place, right before a sign, are a count; the rest is the size of the charge. `SO42-`: one,
 * `Ca2+`: none, `NH4+`: all; each with a note. Of the two readings the one is taken that is an ion chemistry knows.
 * @param opening the bracket that they stand behind; undefined behind a symbol
 * @param first how many symbols stand before that bracket or symbol
 * @param end the index of the sign
 * @throws InputProblem where they can be either: `O2-`, `N3-`
 */
function digitsOfCount(reading: Reading, opening: string | undefined, first: number, end: number): number {
  const { text, at: start } = reading;
  const digits = text.slice(start, end);
  const sign = text.charAt(end);
  const settled = isSubscriptDigit(text.charCodeAt(start)) || countDigit(text.charCodeAt(end + 1)) >= 0;
  if (settled || reading.depth > 0) return digits.length;
  if (opening === "[" && first === 0 && digits.length === 1) {
    reading.note(formulaNotes.sizeOfCharge(digits));
    return 0;
  }
  const asCount = /^[1-9]\d*$/.test(digits) && isIon(reading, opening, first, digits, sign);
  const asCharge = /^[1-9]?[1-9]$/.test(digits) && isIon(reading, opening, first, digits.slice(0, -1), digits.slice(-1) + sign);
  // One atom of charge one either way.
  if (asCharge && (!asCount || digits === "1")) {
    if (digits !== "1") reading.note(formulaNotes.chargeBehindCount(digits, sign));
    return digits.length - 1;
  }
  const isClear = asCount || (opening === undefined && first > 0 && digits.length === 1);
  if (!isClear || asCharge) throw chargeOrCount(reading.spot(start), digits, sign);
  reading.note(formulaNotes.countBeforeCharge(digits, sign));
  return digits.length;
}

/** True where all that is read so far, the last of it times a count, is a known ion of a charge such as "2-" or "+". */
function isIon(reading: Reading, opening: string | undefined, first: number, count: string, charge: string): boolean {
  if (charge.length > 2 || chargeSign(reading.text.charAt(reading.at + count.length + charge.length)) !== 0) return false;
  const last = opening === undefined ? reading.text.slice(reading.symbolAt, reading.at) : undefined;
  const size = Number(charge.slice(0, -1) || 1) * chargeSign(charge.slice(-1));
  return isKnownIon(withCount(reading.atoms, first, last, Number(count || 1)), size);
}
