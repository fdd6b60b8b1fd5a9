// What a spreadsheet makes of an expression, on plain values: the second reading beside the written cell formula. Only what
// run sheets use; that the written formulas mean the same is shown by the suites that run the grid's engine.
import { callCellFunction } from "../../cells/callCellFunction";
import { CellProblem, type Answer } from "../../cells/CellProblem";
import { everyFunction } from "../../functions/catalogue";
import type { Call, Cell, Expression, Infix, Range } from "../../runsheet/expressions/Expression";
import { builtIn, type Worked } from "./builtIns";
import { compared, elementwise, error, isError, isTable, number, textOf, type Plain, type Table } from "./Plain";

export interface ValueAt {
  (row: number, column: number, sheet?: string): Plain;
  /** Whether a cell holds a formula still; left out: none does. */
  readonly isFormula?: (row: number, column: number) => boolean;
  /** True where our functions are not known, as in a spreadsheet without Retort: each gives #NAME?. */
  readonly isWithoutOurs?: boolean;
}

/** @throws when an expression gives a table where a cell holds one value */
export function workOut(expression: Expression | undefined, at: ValueAt): Plain {
  const value = evaluate(expression, at);
  if (!isTable(value)) return value;
  if (value.length === 1 && value[0]?.length === 1) return value[0][0] ?? null;
  throw new Error(`a table stands where one value is wanted: ${JSON.stringify(expression)}`);
}

/** The value or the table of values. */
export function evaluate(expression: Expression | undefined, at: ValueAt): Plain | Table {
  if (expression === undefined) return null;
  if (typeof expression !== "object") return expression;
  switch (expression.kind) {
    case "cell":
      return at(expression.row, expression.column, expression.sheet);
    case "range": {
      const { from, to } = expression;
      const columns = Array.from({ length: to.column - from.column + 1 }, (_, index) => from.column + index);
      return Array.from({ length: to.row - from.row + 1 }, (_, index) => columns.map((column) => at(from.row + index, column, from.sheet)));
    }
    case "bracketed":
      return evaluate(expression.inner, at);
    case "joined":
      return expression.parts.reduce<Plain>((so, part) => {
        const next = workOut(part, at);
        return isError(so) ? so : isError(next) ? next : textOf(so) + textOf(next);
      }, "");
    case "infix":
      return infix(expression, at);
    case "call":
      return call(expression, at);
  }
}

function infix({ left, operator, right }: Infix, at: ValueAt): Plain | Table {
  return elementwise(evaluate(left, at), evaluate(right, at), (one, other) => {
    if (isError(one)) return one;
    if (isError(other)) return other;
    switch (operator) {
      case "=":
        return compared(one, other) === 0;
      case "<":
        return compared(one, other) < 0;
      case "<=":
        return compared(one, other) <= 0;
      case ">":
        return compared(one, other) > 0;
      case ">=":
        return compared(one, other) >= 0;
      default:
        return arithmetic(number(one), operator, number(other));
    }
  });
}

function arithmetic(one: number | CellProblem, operator: "+" | "-" | "*" | "/" | "^", other: number | CellProblem): Plain {
  if (isError(one)) return one;
  if (isError(other)) return other;
  if (operator === "/" && other === 0) return error("#DIV/0!");
  return { "+": one + other, "-": one - other, "*": one * other, "/": one / other, "^": one ** other }[operator];
}

function call({ name, given }: Call, at: ValueAt): Plain | Table {
  if (name.startsWith("RETORT.")) return ours(name.slice("RETORT.".length), given, at);
  if (isOfPlace(name)) return ofPlace(name, given[0], at);
  const one = (index: number): Plain => workOut(given[index], at);
  if (name === "IF") {
    const condition = one(0);
    return isError(condition) ? condition : evaluate(condition ? given[1] : given[2], at);
  }
  if (name === "IFERROR") {
    const value = one(0);
    return isError(value) ? one(1) : value;
  }
  return builtIn[name as Worked](...given.map((argument) => evaluate(argument, at)));
}

const OF_PLACE = ["ROW", "ROWS", "COLUMN", "ISFORMULA"] as const;
type OfPlace = (typeof OF_PLACE)[number];
const isOfPlace = (name: string): name is OfPlace => (OF_PLACE as readonly string[]).includes(name);

/** Functions that ask where cells stand, not what they hold. */
function ofPlace(name: OfPlace, given: Expression | undefined, at: ValueAt): Plain | Table {
  const place = given as Cell | Range;
  const [from, to] = place.kind === "cell" ? [place, place] : [place.from, place.to];
  if (name === "ROWS") return to.row - from.row + 1;
  const rows = Array.from({ length: to.row - from.row + 1 }, (_, index) => from.row + index);
  const columns = Array.from({ length: to.column - from.column + 1 }, (_, index) => from.column + index);
  const table = rows.map((row) =>
    columns.map((column): Plain => (name === "ROW" ? row : name === "COLUMN" ? column + 1 : (at.isFormula?.(row, column) ?? false))),
  );
  return place.kind === "cell" ? (table[0]?.[0] ?? null) : table;
}

function ours(name: string, given: Call["given"], at: ValueAt): Plain | Table {
  // No function of ours gives it, so it is none of their codes.
  if (at.isWithoutOurs === true) return new CellProblem("#NAME?" as CellProblem["code"], "");
  const definition = everyFunction.find((one) => one.name === name);
  if (definition === undefined) throw new Error(`no function ${name}`);
  const raw = (value: Plain): unknown => (isError(value) ? { type: "Error", basicValue: value.code } : value);
  const answer: Answer | Answer[][] = callCellFunction(
    definition,
    given.map((argument) => {
      const value = evaluate(argument, at);
      return isTable(value) ? value.map((row) => row.map(raw)) : raw(value);
    }),
  );
  return Array.isArray(answer) && answer.length === 1 && answer[0]?.length === 1 ? (answer[0][0] ?? null) : answer;
}
