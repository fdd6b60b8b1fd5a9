import { commaOrDot, countTooLarge, countTooSmall, leadingZero, zeroCount } from "../../../problems/functions/formulaProblems";
import { countDigit, isSubscriptDigit } from "../characters";
import { formulaNotes } from "../formulaNotes";
import { refuseDoubtfulDecimal } from "../hydrates/doubtfulDecimal";
import { isHydrateDot } from "../hydrates/hydrateDot";
import { joinsSalt } from "../hydrates/joinsSalt";
import type { Reading } from "../Reading";
import { vulgarFractions } from "./vulgarFractions";

/** A number in a formula: a count after a symbol, or an amount before a formula. */
interface Amount {
  readonly value: number;
  /** The index after it. */
  readonly end: number;
}

// Bounds of sense, chosen here: the largest known protein has under 400,000 atoms; a dopant at parts per million is 0.000001.
export const LARGEST_COUNT = 10_000_000;
export const SMALLEST_COUNT = 0.000001;

// One digit over one digit, a formula behind it; 11/2 is left alone, since 1 1/2 is often so typed.
const FRACTION = /([1-9])\/([2-9])(?=\s*[A-Z([{])/y;

/**
 * The number at an index: digits of one style, a decimal point or comma, a fraction such as ½ or 1½, and 1/2 as an amount.
 * A full stop is the decimal point of an amount, and of a count where no hydrate or salt follows it.
 * @returns undefined where no number begins
 * @throws InputProblem for zero, a leading zero, a comma that can be a hydrate dot, and numbers out of bounds
 */
export function readAmount(reading: Reading, at: number, role: "count" | "amount"): Amount | undefined {
  const { text } = reading;
  const typed = role === "amount" ? readTypedFraction(reading, at) : undefined;
  if (typed !== undefined) return typed;
  const whole = digitsFrom(text, at);
  let end = at + whole.length;
  let decimals = "";
  if (whole !== "" && isDecimalMark(reading, end, role, whole)) {
    if (text.charAt(end) === ",") reading.note(formulaNotes.decimalComma(reading.characterAt(end)));
    decimals = digitsFrom(text, end + 1);
    const mark = end;
    end += 1 + decimals.length;
    if (role === "count" && whole !== "0") refuseDoubtfulDecimal(reading, mark, end);
  }
  const fraction = decimals === "" ? vulgarFractions.get(text.charAt(end)) : undefined;
  if (fraction !== undefined) end++;
  if (end === at) return undefined;
  const value = Number(`${whole}.${decimals}` === "." ? 0 : `${whole}.${decimals}`) + (fraction ?? 0);
  const seen = text.slice(at, end);
  const spot = reading.spot(at);
  if (value === 0) throw zeroCount(spot, seen);
  if (whole.length > 1 && whole.startsWith("0")) throw leadingZero(spot, seen);
  if (value > LARGEST_COUNT) throw countTooLarge(spot, seen, LARGEST_COUNT);
  if (value < SMALLEST_COUNT) throw countTooSmall(spot, seen, SMALLEST_COUNT);
  return { value, end };
}

/** An amount typed with a slash at an index, as in `CaSO4·1/2H2O`, read with a note; undefined where none stands there. */
function readTypedFraction(reading: Reading, at: number): Amount | undefined {
  const { text } = reading;
  if (text.charAt(at + 1) !== "/") return undefined;
  FRACTION.lastIndex = at;
  const [seen, above, below] = FRACTION.exec(text) ?? [];
  if (seen === undefined) return undefined;
  reading.note(formulaNotes.fraction(reading.characterAt(at), seen));
  return { value: Number(above) / Number(below), end: at + seen.length };
}

/** Digits of one style (a subscript run ends where plain digits begin), written as plain ones. */
function digitsFrom(text: string, at: number): string {
  const subscript = isSubscriptDigit(text.charCodeAt(at));
  let digits = "";
  for (let index = at; ; index++) {
    const code = text.charCodeAt(index);
    const digit = countDigit(code);
    if (!(digit >= 0) || isSubscriptDigit(code) !== subscript) return digits;
    digits += digit;
  }
}

function isDecimalMark(reading: Reading, mark: number, role: "count" | "amount", whole: string): boolean {
  const { text } = reading;
  const character = text.charAt(mark);
  if (character !== "." && character !== ",") return false;
  const sameStyle = isSubscriptDigit(text.charCodeAt(mark - 1)) === isSubscriptDigit(text.charCodeAt(mark + 1));
  if (!(countDigit(text.charCodeAt(mark + 1)) >= 0) || !sameStyle) return false;
  if (role === "amount" || whole === "0" || !(isHydrateDot(text, mark) || joinsSalt(text, mark))) return true;
  if (character === ",") throw commaOrDot(reading.spot(mark));
  return false;
}
