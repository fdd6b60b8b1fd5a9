import type { WhyFixed } from "../../../problems/sharing/plainCellProblems";

/** Thrown inside the rewriting alone: the formula has no plain form, and why. */
export class CannotWrite extends Error {
  constructor(readonly why: WhyFixed) {
    super(why);
  }
}

// Excel specifications and limits, also the levels of brackets.
export const LONGEST_FORMULA = 8192;
const DEEPEST = 64;

/** @throws CannotWrite for a formula that no cell holds */
export function checked(formula: string): string {
  if (formula.length > LONGEST_FORMULA || depthOf(formula) > DEEPEST) throw new CannotWrite("tooLong");
  return formula;
}

/** How many brackets stand inside one another, texts left aside. */
function depthOf(formula: string): number {
  let [depth, deepest, isText] = [0, 0, false];
  for (const character of formula) {
    if (character === '"') isText = !isText;
    else if (!isText && character === "(") deepest = Math.max(deepest, ++depth);
    else if (!isText && character === ")") depth--;
  }
  return deepest;
}
