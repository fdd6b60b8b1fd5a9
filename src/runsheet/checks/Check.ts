import { NOTHING, when, type Condition } from "../expressions/choices";
import { fn, is, type Cell, type Expression } from "../expressions/Expression";
import { checkWords, MARKS } from "../words/checkWords";

/** What is looked at on a sheet, step by step; the first that holds is told, and past the last all is in order. */
export interface Check {
  /** Nothing is said as long as this holds: what the check needs is not yet there. */
  readonly silentWhile: Condition;
  readonly steps: readonly Step[];
}

/** What holds, and the sentence about it, which begins with its mark. */
export interface Step {
  readonly when: Condition;
  readonly says: Expression;
}

export const step = (condition: Condition, says: Expression): Step => ({ when: condition, says });

/** Nothing, or where, what, and what to do. */
export const findingOf = ({ silentWhile, steps }: Check): Expression =>
  fn(
    "IFERROR",
    when(
      silentWhile,
      NOTHING,
      steps.reduceRight<Expression>((next, one) => when(one.when, one.says, next), NOTHING),
    ),
    checkWords.unreadable,
  );

const { inOrder, notYet, doubt, contradiction } = checkWords.verdicts;

/** The verdict beside a finding. */
export const verdictOf = ({ silentWhile }: Check, finding: Cell): Expression => {
  const graded = when(is(fn("LEFT", finding, 1), "=", MARKS.contradiction.trim()), contradiction, doubt);
  return fn("IFERROR", when(is(finding, "=", NOTHING), when(silentWhile, notYet, inOrder), graded), doubt);
};
