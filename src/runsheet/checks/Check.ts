import { NOTHING, when, type Condition } from "../expressions/choices";
import { fn, is, type Cell, type Expression } from "../expressions/Expression";
import { checkWords, MARKS } from "../words/checkWords";

/** What is looked at on a sheet, step by step; the first that holds is told, and past the last all is in order. */
export interface Check {
  /** Told before anything else, also while what the check needs is not yet there: what stands in a box and cannot be used. */
  readonly first?: readonly (Step | Sought)[];
  /** Nothing is said as long as this holds: what the check needs is not yet there. */
  readonly silentWhile: Condition;
  readonly steps: readonly Step[];
  /** While this holds nothing can be told, because what the check rests on are calls of ours that the spreadsheet does not know. */
  readonly unjudgedWhile?: Condition;
}

/** What holds, and the sentence about it, which begins with its mark. */
export interface Step {
  readonly when: Condition;
  readonly says: Expression;
}

/** A sentence that is an error as long as it does not hold, so that what is looked for stands in the formula once. */
export type Sought = Pick<Step, "says">;

export const step = (condition: Condition, says: Expression): Step => ({ when: condition, says });

/** Nothing, or where, what, and what to do. */
export const findingOf = ({ first = [], silentWhile, steps, unjudgedWhile }: Check): Expression =>
  fn("IFERROR", told(first, when(silentWhile, NOTHING, unless(unjudgedWhile, told(steps, NOTHING)))), checkWords.unreadable);

const told = (steps: readonly (Step | Sought)[], otherwise: Expression): Expression =>
  steps.reduceRight<Expression>((next, one) => ("when" in one ? when(one.when, one.says, next) : fn("IFERROR", one.says, next)), otherwise);

const unless = (unjudgedWhile: Condition | undefined, otherwise: Expression): Expression =>
  unjudgedWhile === undefined ? otherwise : when(unjudgedWhile, checkWords.notJudged, otherwise);

const { inOrder, notYet, doubt, contradiction, notJudged } = checkWords.verdicts;

/** The verdict beside a finding. */
export const verdictOf = ({ silentWhile, unjudgedWhile }: Check, finding: Cell): Expression => {
  const begins = (mark: string) => is(fn("LEFT", finding, 1), "=", mark.trim());
  const graded = when(begins(MARKS.contradiction), contradiction, when(begins(MARKS.unseen), notYet, doubt));
  const told = unjudgedWhile === undefined ? graded : when(is(finding, "=", checkWords.notJudged), notJudged, graded);
  return fn("IFERROR", when(is(finding, "=", NOTHING), when(silentWhile, notYet, inOrder), told), doubt);
};
