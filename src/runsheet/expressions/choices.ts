import { fn, is, type Call, type Cell, type Expression, type Infix, type Range } from "./Expression";

export type Condition = Call | Infix;

/** What a cell shows while it has nothing to say. */
export const NOTHING = "";

export const when = (condition: Condition, then: Expression, otherwise: Expression): Call => fn("IF", condition, then, otherwise);

/** The first that holds of conditions with their answers, or what is said otherwise. */
export const firstOf = (answers: readonly (readonly [Condition, Expression])[], otherwise: Expression): Expression =>
  answers.reduceRight((next, [condition, then]) => when(condition, then, next), otherwise);

/** Whether not one of these cells holds a number. A formula that shows nothing holds text, not a number. */
export const noNumber = (...cells: readonly (Cell | Range)[]): Infix => is(fn("COUNT", ...cells), "=", 0);

/** Whether any of these cells is still without a number. */
export const lacksNumber = (...cells: readonly Cell[]): Infix => is(fn("COUNT", ...cells), "<", cells.length);

/** An answer once all the cells it needs hold numbers, else nothing. */
export const onceNumbers = (needed: readonly Cell[], answer: Expression): Call => when(lacksNumber(...needed), NOTHING, answer);

/** Nothing where the answer would be an error. */
export const orNothing = (answer: Expression): Call => fn("IFERROR", answer, NOTHING);
