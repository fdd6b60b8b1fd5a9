import { NOTHING, when, type Condition } from "../expressions/choices";
import type { Expression } from "../expressions/Expression";
import { checkWords } from "../words/checkWords";

/** What is looked at on one sample, step by step; the first step that ends it decides, and past the last all is in order. */
export interface Check {
  /** Nothing is said as long as this holds: what the check needs is not yet there. */
  readonly silentWhile: Condition;
  readonly steps: readonly Step[];
  /** In place of "in order", where a check ends otherwise. */
  readonly otherwise?: Expression;
}

export type Step =
  /** Ends with these words when the condition holds. */
  | { readonly when: Condition; readonly says: Expression }
  /** Ends with these words unless the condition holds. */
  | { readonly unless: Condition; readonly says: Expression }
  /** Steps that are left out as long as the condition holds. */
  | { readonly skipWhile: Condition; readonly steps: readonly Step[] };

export const IN_ORDER = checkWords.inOrder;

/** Nothing, "in order", or what to look at. */
export const verdictOf = ({ silentWhile, steps, otherwise = IN_ORDER }: Check): Expression =>
  when(silentWhile, NOTHING, afterSteps(steps, otherwise));

const afterSteps = (steps: readonly Step[], otherwise: Expression): Expression =>
  steps.reduceRight((next, step) => {
    if ("when" in step) return when(step.when, step.says, next);
    if ("unless" in step) return when(step.unless, next, step.says);
    return when(step.skipWhile, next, afterSteps(step.steps, next));
  }, otherwise);
