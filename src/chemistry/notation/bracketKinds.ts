// Opening brackets, plain, subscript and full-width; each has its partner at the same index below.
const OPENING = "([{₍（";
const CLOSING = ")]}₎）";
// The first of each, and by far the most frequent, is told without a search.
const ROUND_OPENS = OPENING.charCodeAt(0);
const ROUND_CLOSES = CLOSING.charCodeAt(0);

/** Which kind of bracket a character code opens; -1 for none. */
export const openingKind = (code: number): number => (code === ROUND_OPENS ? 0 : OPENING.indexOf(String.fromCharCode(code)));

/** Which kind of bracket a character code closes; -1 for none. */
export const closingKind = (code: number): number => (code === ROUND_CLOSES ? 0 : CLOSING.indexOf(String.fromCharCode(code)));
