import type { AstExpression } from "@borgar/fx";
import type { Call, Part } from "../formula/parts";
import { CannotWrite, LONGEST_FORMULA } from "./CannotWrite";
import { FoundOnce, mayGrow } from "./FoundOnce";
import { within, type Scope } from "./Scope";
import { writtenCalled } from "./writtenCalled";
import { firstCell, intersection, isVariable, spilled, writtenReference } from "./writtenReference";
import { keptLambda, writtenLet } from "./writtenVariables";

/** The text of one part of a formula. @throws CannotWrite, also for one longer than any cell holds */
export type Write = (part: Part, scope: Scope) => string;

/** Writes one call of ours; the rewriting gives it, so that the printing of a formula knows nothing of functions. */
export type WriteCall = (call: Call, name: string, scope: Scope) => string;

/** Writes the parts of one formula, each that may be asked for again once. */
export function writing(writeCall: WriteCall): Write {
  const texts = new FoundOnce<string>();
  const write: Write = (part, scope) => {
    const text = mayGrow(part) ? texts.of(part, scope, () => writtenAnew(part, scope, write, writeCall)) : writtenAnew(part, scope, write, writeCall);
    // What stands for a variable is written wherever that is, so that a few within one another would fill any memory.
    if (text.length > LONGEST_FORMULA) throw new CannotWrite("tooLong");
    return text;
  };
  return write;
}

function writtenAnew(part: Part, scope: Scope, write: Write, writeCall: WriteCall): string {
  switch (part?.type) {
    case undefined:
      return "";
    case "Literal":
    case "ErrorLiteral":
      return scope.tree.textOf(part);
    case "ReferenceIdentifier":
      return writtenReference(part, scope, write);
    case "UnaryExpression":
      return unary(part, scope, write);
    case "BinaryExpression":
      return binary(part, scope, write);
    case "ArrayExpression":
      return scope.isSingle ? scope.tree.textOf(part.elements[0]?.[0] as AstExpression) : scope.tree.textOf(part);
    case "LetExpression":
      return writtenLet(part, scope, write);
    case "CallExpression":
      return writtenCalled(part, scope, write, writeCall);
    case "LambdaExpression":
      return keptLambda({ lambda: part, scope }, [], scope, write);
    default:
      throw new CannotWrite("unreadable");
  }
}

// How tightly operators bind in a cell formula, the sign before a number tighter than a power.
const BINDS: Readonly<Record<string, number>> = {
  ...{ "=": 1, "<": 1, ">": 1, "<=": 1, ">=": 1, "<>": 1 },
  ...{ "&": 2, "+": 3, "-": 3, "*": 4, "/": 4, "^": 5, ",": 8, " ": 9, ":": 10 },
};
const PERCENT = 6;
const SIGN = 7;
const TIGHTEST = 11;

function bindsOf(part: Part): number {
  if (part?.type === "BinaryExpression") return BINDS[part.operator] ?? 1;
  if (part?.type === "UnaryExpression") return part.operator === "%" ? PERCENT : part.operator === "#" ? TIGHTEST : SIGN;
  return TIGHTEST;
}

/** The text of a part, in brackets where it binds less than what is around it. */
const inBrackets = (text: string, part: Part, binds: number): string => (bindsOf(part) < binds ? `(${text})` : text);

/** These make one reference of two, for which each is needed whole. */
const JOINS: readonly string[] = [":", " ", ","];

function binary(part: Extract<AstExpression, { type: "BinaryExpression" }>, scope: Scope, write: Write): string {
  const joins = JOINS.includes(part.operator);
  if (joins && scope.isSingle) return firstCell(part, scope);
  const binds = bindsOf(part);
  const inside = joins ? within(scope, { isOnEach: false }) : scope;
  const [left, right] = part.arguments;
  return `${inBrackets(write(left, inside), left, binds)}${part.operator}${inBrackets(write(right, inside), right, binds + 1)}`;
}

function unary(part: Extract<AstExpression, { type: "UnaryExpression" }>, scope: Scope, write: Write): string {
  const [inner] = part.arguments;
  switch (part.operator) {
    case "#":
      return spilled(part, scope);
    case "@":
      // A range behind @ is cut by the row or column of the cell, an array gives its first value.
      if (inner?.type === "ReferenceIdentifier" && !isVariable(inner, scope)) return intersection(inner, scope);
      return inBrackets(write(inner, within(scope, { isSingle: true })), inner, SIGN);
    case "%":
      return `${inBrackets(write(inner, scope), inner, PERCENT)}%`;
    default:
      return `${part.operator}${inBrackets(write(inner, scope), inner, SIGN)}`;
  }
}
