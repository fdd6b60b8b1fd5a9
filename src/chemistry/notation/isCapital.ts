const CAPITAL_A = 0x41;
const CAPITAL_Z = 0x5a;

/** True for the character code of a capital Latin letter, with which every symbol begins. */
export const isCapital = (code: number): boolean => code >= CAPITAL_A && code <= CAPITAL_Z;
