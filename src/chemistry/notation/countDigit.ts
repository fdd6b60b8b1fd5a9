const DIGITS = 10;
const ASCII_ZERO = 0x30;
const SUBSCRIPT_ZERO = 0x2080;
const FULL_WIDTH_ZERO = 0xff10;

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
