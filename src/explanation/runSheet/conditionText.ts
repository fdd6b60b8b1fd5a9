import type { Call, Cell, Expression, Infix, Range } from "../../runsheet/expressions/Expression";
import { isPlace } from "../../runsheet/expressions/parts";
import { FIRST_DATE } from "../../runsheet/formulas/clock";
import { choiceWords } from "../../runsheet/words/choiceWords";
import { agreementWords } from "../../runsheet/words/agreementWords";
import { sheetWords } from "../../runsheet/words/sheetWords";
import { coreOf, nameOf } from "./cellNames";
import { isError, isTable } from "./Plain";
import { namedOnly, quantityText } from "./quantityText";
import type { SheetCells } from "./RunCells";
import { evaluate } from "./workOut";

/** A condition of the sheet in words, each cell by its name with what it holds. */
export function conditionText(cells: SheetCells, condition: Expression): string {
  if (typeof condition === "boolean") return condition ? choiceWords.always : choiceWords.never;
  if (typeof condition !== "object") return String(condition);
  if (condition.kind === "bracketed") return conditionText(cells, condition.inner);
  if (condition.kind === "call") return callText(cells, condition);
  if (condition.kind !== "infix") return sideText(cells, condition);
  return countedText(cells, condition) ?? comparedText(cells, condition);
}

/** How many are filled, or say something, where the comparison only asks for none, any or all of them. */
function countedText(cells: SheetCells, { left, operator, right }: Infix): string | undefined {
  if (isCall(left, "COUNT") || isCall(left, "COUNTA")) {
    const places = left.given.filter(isPlace);
    const isOfCells = places.length === left.given.length && places.every(({ kind }) => kind === "cell");
    const of = left.given.map((one) => sideText(cells, one)).join(", ");
    if (operator === "=" && right === 0) return choiceWords.noneFilled(of);
    if (operator === ">" && right === 0) return choiceWords.someFilled(of);
    if (operator === "<" && right === left.given.length && isOfCells) return choiceWords.oneMissing(of, left.given.length);
    if (operator === "=" && right === left.given.length && isOfCells) return choiceWords.allNumbers(of, left.given.length);
    // More is filled than there are numbers.
    if (operator === ">" && left.name === "COUNTA" && isCall(right, "COUNT"))
      return choiceWords.someNoNumber(places.map((place) => namedOnly(cells, place)).join(", "));
  }
  const [of, what] = isCall(left, "COUNTIF") ? left.given : [];
  if (of !== undefined && what !== undefined && right === 0 && (operator === ">" || operator === "="))
    return (operator === ">" ? choiceWords.someSay : choiceWords.noneSay)(sideText(cells, of), sideText(cells, what));
  if (isCall(left, "ROUND") && operator === "=" && left.given[1] === 0 && JSON.stringify(left.given[0]) === JSON.stringify(right))
    return choiceWords.isWhole(sideText(cells, right));
  if (isCall(left, "SUMPRODUCT") && right === 0 && (operator === ">" || operator === "=") && isOfConditions(left.given[0]))
    return (operator === ">" ? choiceWords.anyOf : choiceWords.noneOf)(eachText(cells, left.given[0] ?? false));
  return undefined;
}

function comparedText(cells: SheetCells, { left, operator, right }: Infix): string {
  if (typeof left !== "object" && typeof right !== "object")
    return evaluate({ kind: "infix", left, operator, right }, cells.at) === true ? choiceWords.always : choiceWords.never;
  const dated = dateText(cells, { kind: "infix", left, operator, right });
  if (dated !== undefined) return dated;
  if (right === false && operator === "=") return negated(cells, left);
  if (right === "" && operator === "=") return choiceWords.isBlank(sideText(cells, left));
  if (right === "" && operator === ">") return choiceWords.saysSomething(sideText(cells, left));
  return `${sideText(cells, left)} ${operator} ${sideText(cells, right)}${operator === "=" ? codeText(cells, left, right) : ""}`;
}

// A day in the serial number that a spreadsheet keeps of a time: what is below 1 is a clock time without its date.
const ONE_DAY = 1;

/** Whether a clock has its date, which the sheet sees by the size of its number. */
function dateText(cells: SheetCells, { left, operator, right }: Infix): string | undefined {
  if (!isPlace(left)) return undefined;
  const { row, column } = left.kind === "cell" ? left : left.from;
  if (cells.planned(row, column)?.format !== "hh:mm") return undefined;
  if (right === ONE_DAY && operator === "<") return choiceWords.hasNoDate(sideText(cells, left));
  if (right === ONE_DAY && operator === ">=") return choiceWords.hasDate(sideText(cells, left));
  return right === FIRST_DATE && operator === ">=" ? choiceWords.hasLateDate(sideText(cells, left)) : undefined;
}

/** What the number stands for that a cell tells how samples agree by. */
function codeText(cells: SheetCells, left: Expression, right: Expression): string {
  const isOfAgreement = typeof left === "object" && left.kind === "cell" && nameOf(cells, left).core === AGREEMENT;
  return isOfAgreement && typeof right === "number" ? ` (${agreementWords[right] ?? ""})` : "";
}
const AGREEMENT = coreOf(sheetWords.workings.together.split("; ")[1] ?? "");

/** The other way of a comparison. */
const OTHER_WAY = { "=": "≠", "<": ">=", ">": "<=", "<=": ">", ">=": "<" } as const;

/** That a condition does not hold, without saying "not" where another word says it. */
function negated(cells: SheetCells, condition: Expression): string {
  if (typeof condition === "object" && condition.kind === "bracketed") return negated(cells, condition.inner);
  // None of several is each of them not, and not all of them is one of them not.
  if (isCall(condition, "OR")) return joinedText(cells, "AND", condition.given.map(opposite));
  if (isCall(condition, "AND")) return joinedText(cells, "OR", condition.given.map(opposite));
  if (isCall(condition, "IFERROR")) {
    const [first = false, otherwise = false] = condition.given;
    const value = evaluate(first, cells.at);
    return negated(cells, !isTable(value) && isError(value) ? otherwise : first);
  }
  if (isCall(condition, "IF")) {
    const [first = false, then = false, otherwise = false] = condition.given;
    if (then === true) return joinedText(cells, "AND", [first, otherwise].map(opposite));
    if (otherwise === false) return joinedText(cells, "OR", (evaluate(first, cells.at) ? [first, then] : [first]).map(opposite));
  }
  if (isCall(condition, "ISNUMBER")) return choiceWords.isNoNumber(sideText(cells, condition.given[0] ?? ""));
  if (typeof condition === "object" && condition.kind === "infix" && (condition.operator === "*" || condition.operator === "+")) {
    const parts = terms(condition, condition.operator, condition.operator === "*" ? 1 : 0);
    return apart(parts.map((one) => negated(cells, one)), condition.operator === "*" ? choiceWords.or : choiceWords.and); // prettier-ignore
  }
  if (typeof condition !== "object" || condition.kind !== "infix" || !(condition.operator in OTHER_WAY)) {
    return choiceWords.not(conditionText(cells, condition));
  }
  const { left, operator, right } = condition;
  if (right === false && operator === "=") return conditionText(cells, left);
  if (isCall(left, "COUNT") && operator === "<" && right === left.given.length) return conditionText(cells, { ...condition, operator: "=" });
  const asksForAny =
    right === 0 &&
    (operator === ">" || operator === "=") &&
    (isCall(left, "COUNT") || isCall(left, "COUNTA") || isCall(left, "COUNTIF") || isCall(left, "SUMPRODUCT"));
  if (asksForAny) return conditionText(cells, { ...condition, operator: operator === ">" ? "=" : ">" });
  if (right === "" || countedText(cells, condition) !== undefined) return choiceWords.not(conditionText(cells, condition));
  return `${sideText(cells, left)} ${OTHER_WAY[operator as keyof typeof OTHER_WAY]} ${sideText(cells, right)}${codeText(cells, left, right)}`;
}

const opposite = (one: Expression): Infix => ({ kind: "infix", left: one, operator: "=", right: false });

const isCall = (one: Expression | undefined, name: Call["name"]): one is Call => typeof one === "object" && one.kind === "call" && one.name === name;

/** True of what is TRUE or FALSE cell by cell, and no sum of numbers. */
function isOfConditions(each: Expression | undefined): boolean {
  if (typeof each !== "object" || isPlace(each)) return false;
  if (each.kind === "bracketed") return isOfConditions(each.inner);
  if (each.kind === "call") return ["ISNUMBER", "ISTEXT", "ISBLANK", "ISERROR", "ISFORMULA", "AND", "OR", "ABS"].includes(each.name);
  if (each.kind !== "infix") return false;
  if (["=", "<", "<=", ">", ">="].includes(each.operator)) return true;
  return isOfConditions(each.left) || isOfConditions(each.right);
}

function callText(cells: SheetCells, { name, given }: Call): string {
  const [first = false, then = false, otherwise = false] = given;
  if (name === "IF" && then === true) return callText(cells, { kind: "call", name: "OR", given: [first, otherwise] });
  // What is not asked is not told: there it may show an error.
  if (name === "IF" && otherwise === false) return conditionText(cells, evaluate(first, cells.at) ? both(first, then) : first);
  if (name === "IF") return choiceWords.chosen(...([first, then, otherwise].map((one) => conditionText(cells, one)) as [string, string, string]));
  if (name === "IFERROR") {
    const value = evaluate(first, cells.at);
    return conditionText(cells, !isTable(value) && isError(value) ? then : first);
  }
  if (name === "AND" || name === "OR") return joinedText(cells, name, given);
  if (name === "ISNUMBER") return choiceWords.isNumber(sideText(cells, given[0] ?? ""));
  if (name === "ISTEXT") return choiceWords.isText(sideText(cells, given[0] ?? ""));
  if (name === "ISERROR") return choiceWords.isError(sideText(cells, given[0] ?? ""));
  if (name === "ISFORMULA")
    return choiceWords.isFormula(isPlace(given[0]) ? namedOnly(cells, given[0] as Cell | Range) : sideText(cells, given[0] ?? ""));
  return sideText(cells, { kind: "call", name, given });
}

/** All of several conditions or any of them; one that is several itself stands in brackets. */
function joinedText(cells: SheetCells, name: "AND" | "OR", given: readonly Expression[]): string {
  const parts = given
    .flatMap((one) => (isCall(one, name) ? one.given : [one]))
    .filter((one) => one !== (name === "AND"))
    .map((one) => conditionText(cells, one));
  return apart([...new Set(parts)], name === "AND" ? choiceWords.and : choiceWords.or);
}

function apart(parts: readonly string[], word: string): string {
  if (parts.length === 1) return parts[0] ?? "";
  return parts.map((part) => (part.includes(choiceWords.and) || part.includes(choiceWords.or) ? `(${part})` : part)).join(word);
}

const both = (one: Expression, other: Expression): Call => ({ kind: "call", name: "AND", given: [one, other] });

/** What holds of a cell of a block: factors are "and", terms "or", one less what is asked is "not"; that a sum of both is above 0 is the sum. */
function eachText(cells: SheetCells, each: Expression): string {
  if (typeof each !== "object") return conditionText(cells, each);
  if (each.kind === "bracketed") return eachText(cells, each.inner);
  if (isCall(each, "ABS")) {
    const [one, other] = alikeIn(each.given[0] ?? 0);
    if (one !== undefined && other !== undefined) return choiceWords.areAlike(sideText(cells, one), sideText(cells, other));
  }
  if (each.kind !== "infix") return conditionText(cells, each);
  if (each.operator === ">" && each.right === 0 && !isPlace(each.left) && isOfConditions(each.left)) return eachText(cells, each.left);
  const { left, operator, right } = each;
  const isOfBoth = isOfConditions(left) || isOfConditions(right);
  if (operator === "+" && isOfBoth) return apart(terms(each, "+", 0).map((one) => eachText(cells, one)), choiceWords.or); // prettier-ignore
  if (operator === "*") return apart(terms(each, "*", 1).map((one) => eachText(cells, one)), choiceWords.and); // prettier-ignore
  if (operator === "-" && left === 1) return negated(cells, right);
  return conditionText(cells, each);
}

/** What is added or multiplied in a row, without what changes nothing. */
function terms(of: Expression, operator: "+" | "*", nothing: number): readonly Expression[] {
  const one = bare(of);
  if (typeof one !== "object" || one.kind !== "infix" || one.operator !== operator) return one === nothing ? [] : [one];
  return [...terms(one.left, operator, nothing), ...terms(one.right, operator, nothing)];
}

/** The two blocks of (one < 1) + (other < 1) - 1, whose size is 1 where both have a date or neither. */
function alikeIn(of: Expression): readonly Expression[] {
  const inner = bare(of);
  const sum = typeof inner === "object" && inner.kind === "infix" && inner.operator === "-" && inner.right === 1 ? bare(inner.left) : 0;
  if (typeof sum !== "object" || sum.kind !== "infix" || sum.operator !== "+") return [];
  return [sum.left, sum.right]
    .map(bare)
    .flatMap((one) => (typeof one === "object" && one.kind === "infix" && one.operator === "<" && one.right === 1 ? [one.left] : []));
}

const bare = (of: Expression): Expression => (typeof of === "object" && of.kind === "bracketed" ? bare(of.inner) : of);

const sideText = (cells: SheetCells, side: Expression): string => quantityText(cells, side, (condition) => conditionText(cells, condition));
