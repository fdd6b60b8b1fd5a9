import { fn, is, reckon, type Call, type Cell, type Expression, type Infix, type Range } from "./Expression";

export type Condition = Call | Infix;

/** What a cell shows while it has nothing to say. */
export const NOTHING = "";

/** A condition that does not hold where what it looks at is an error, which is told elsewhere. */
export const unlessError = (condition: Condition): Condition => fn("IFERROR", condition, false);

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

export const all = (...conditions: readonly Condition[]): Call => fn("AND", ...conditions);
export const any = (...conditions: readonly Condition[]): Call => fn("OR", ...conditions);
export const isNumber = (at: Expression): Call => fn("ISNUMBER", at);

/** How many cells of a range satisfy what is worked out cell by cell, each TRUE or FALSE or 1 or 0. */
export const countWhere = (eachCell: Expression): Call => fn("SUMPRODUCT", asNumbers(eachCell));
export const anyWhere = (eachCell: Expression): Infix => is(countWhere(eachCell), ">", 0);

/**
 * The place, from 1, of the first cell that satisfies; an error where none does. SUMPRODUCT makes every spreadsheet work it out cell by cell;
 * INDEX(…,0) would too, but Gnumeric takes it for a place outside.
 */
export const placeWhere = (eachCell: Expression): Call => fn("SUMPRODUCT", fn("MATCH", 1, asNumbers(eachCell), 0));

const ARITHMETIC = ["+", "-", "*", "/", "^"];

/** TRUE and FALSE as 1 and 0; what is reckoned is numbers already, and a formula holds so many characters. */
const asNumbers = (eachCell: Expression): Expression =>
  typeof eachCell === "object" && eachCell.kind === "infix" && ARITHMETIC.includes(eachCell.operator) ? eachCell : reckon(eachCell, "*", 1);

/** Cell by cell: whether it is no number, as 1 or 0. */
export const notNumber = (range: Expression): Infix => reckon(1, "-", fn("ISNUMBER", range));

export const product = (...factors: readonly Expression[]): Expression => factors.reduce((so, factor) => reckon(so, "*", factor));
export const sum = (...terms: readonly Expression[]): Expression => terms.reduce((so, term) => reckon(so, "+", term));
export const square = (of: Expression): Infix => reckon(of, "^", 2);
