import type { WhyFixed } from "../../problems/plainCellProblems";

/** Thrown inside the rewriting alone: the formula has no plain form, and why. */
export class CannotWrite extends Error {
  constructor(readonly why: WhyFixed) {
    super(why);
  }
}

// Excel specifications and limits.
export const LONGEST_FORMULA = 8192;
