// A reference, a name or a plain number binds tighter than any operator and needs no brackets.
const STANDS_ALONE = /^[A-Za-z0-9_.$!:]+$/;

/** An argument's text as one operand of a cell formula: B2 stays, B2-0.1 becomes (B2-0.1). */
export const operand = (text: string): string => (STANDS_ALONE.test(text) ? text : `(${text})`);
