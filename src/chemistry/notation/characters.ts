// What one character of a formula can be, in each of the forms that keyboards and pasted text bring: plain, sub- or superscript, full-width.
const CAPITAL_A = 0x41;
const CAPITAL_Z = 0x5a;
const SMALL_A = 0x61;
const SMALL_Z = 0x7a;
const SPACE = 0x20;
const TAB = 0x09;
const NO_BREAK_SPACE = 0xa0;
// No-break, figure, thin, hair and zero-width spaces, the word joiner and the byte-order mark: what pasted text brings along.
const OTHER_SPACES = /[\u00a0\u00ad\u2000-\u200b\u202f\u205f\u2060\u3000\ufeff]/;
const DIGITS = 10;
const ASCII_ZERO = 0x30;
const SUBSCRIPT_ZERO = 0x2080;
const FULL_WIDTH_ZERO = 0xff10;
const SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
const PLUS = "+⁺＋";
const MINUS = "-−–‐‑⁻－﹣";

/** True for the character code of a capital Latin letter, with which every symbol begins. */
export const isCapital = (code: number): boolean => code >= CAPITAL_A && code <= CAPITAL_Z;

/** True for the character code of a small Latin letter, with which some symbols end. */
export const isSmallLetter = (code: number): boolean => code >= SMALL_A && code <= SMALL_Z;

/** True for a space of any width; a line break is none. */
export const isSpace = (code: number): boolean =>
  code === SPACE || code === TAB || (code >= NO_BREAK_SPACE && OTHER_SPACES.test(String.fromCharCode(code)));

/** The first index from `at` on that holds no space. */
export function skipSpaces(text: string, at: number): number {
  let index = at;
  while (isSpace(text.charCodeAt(index))) index++;
  return index;
}

/** The value of a digit that can stand in a count (plain, subscript or full-width), or -1 for any other character. */
export function countDigit(code: number): number {
  const plain = code - ASCII_ZERO;
  if (plain >= 0 && plain < DIGITS) return plain;
  if (code < SUBSCRIPT_ZERO) return -1;
  if (isSubscriptDigit(code)) return code - SUBSCRIPT_ZERO;
  const wide = code - FULL_WIDTH_ZERO;
  return wide >= 0 && wide < DIGITS ? wide : -1;
}

export const isSubscriptDigit = (code: number): boolean => code >= SUBSCRIPT_ZERO && code < SUBSCRIPT_ZERO + DIGITS;

/** The value of a superscript digit, or -1 for any other character. */
export const superscriptDigit = (character: string): number => (character === "" ? -1 : SUPERSCRIPTS.indexOf(character));

/** 1 or -1 for a sign in any of its forms (plain, superscript, dash), 0 for any other character. */
export function chargeSign(character: string): -1 | 0 | 1 {
  if (character === "") return 0;
  if (PLUS.includes(character)) return 1;
  return MINUS.includes(character) ? -1 : 0;
}
