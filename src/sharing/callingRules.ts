import { findCalls } from "./findCalls";

/** How many rules for colouring or entries, each told by its formulas, call one of our functions. */
export const callingAmong = (rules: readonly (readonly string[])[]): number =>
  rules.filter((formulas) => formulas.some((formula) => findCalls(formula).length > 0)).length;
