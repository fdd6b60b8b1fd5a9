const FIXED = /\$[A-Z]{1,3}\$\d+|\$[A-Z]{1,3}:\$[A-Z]{1,3}|\$\d+:\$\d+/gi;
const TEXT_OR_SHEET = /"[^"]*"|'(?:[^']|'')*'/g;
// Not what stands in a longer name, is a sheet's name or a function's.
const MOVING =
  /(?<![\p{L}\p{N}_.$\\?])(?:\$?[A-Z]{1,3}\$?\d+(?![\p{L}\p{N}_.(\\?!])|\$?[A-Z]{1,3}:\$?[A-Z]{1,3}(?![\p{L}\p{N}_.(\\?!])|\$?\d+:\$?\d+)/iu;

/** True for a defined name that means the same in every cell; one with references that move along with the cell says something else in each. */
export const isFixedName = (formula: string): boolean => !MOVING.test(formula.replace(TEXT_OR_SHEET, "").replace(FIXED, ""));
