const FIXED_CELL = /\$[A-Z]{1,3}\$\d+/gi;
const TEXT = /"[^"]*"/g;
const MOVING_CELL = /(?<![\w$.])\$?[A-Z]{1,3}\$?\d/i;

/** True for a defined name that means the same in every cell; one with references that move along with the cell says something else in each. */
export const isFixedName = (formula: string): boolean => !MOVING_CELL.test(formula.replace(TEXT, "").replace(FIXED_CELL, ""));
