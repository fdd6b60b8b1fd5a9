const SMALL_A = 0x61;
const SMALL_Z = 0x7a;

/** True for the character code of a small Latin letter, with which some symbols end. */
export const isSmallLetter = (code: number): boolean => code >= SMALL_A && code <= SMALL_Z;
