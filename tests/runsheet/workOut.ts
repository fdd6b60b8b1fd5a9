// What a spreadsheet makes of an expression, on plain values: the second reading beside the written cell formula. Only what
// run sheets use; that the written formulas mean the same is shown by the suites that run the grid's engine.
import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem, type Answer } from "../../src/cells/CellProblem";
import { everyFunction } from "../../src/functions/catalogue";
import type { BuiltIn, Call, Cell, Expression, Infix, Range } from "../../src/runsheet/expressions/Expression";
import { jStat } from "jstat";

/** What a cell holds; null is a blank cell. */
export type Plain = number | string | boolean | null | CellProblem;
type Table = readonly (readonly Plain[])[];
export interface ValueAt {
  (row: number, column: number, sheet?: string): Plain;
  /** Whether a cell holds a formula still; left out: none does. */
  readonly isFormula?: (row: number, column: number) => boolean;
}

/** @throws when an expression gives a table where a cell holds one value */
export function workOut(expression: Expression | undefined, at: ValueAt): Plain {
  const value = evaluate(expression, at);
  if (!isTable(value)) return value;
  if (value.length === 1 && value[0]?.length === 1) return value[0][0] ?? null;
  throw new Error(`a table stands where one value is wanted: ${JSON.stringify(expression)}`);
}

const isTable = (value: Plain | Table): value is Table => Array.isArray(value);
const isError = (value: Plain | undefined): value is CellProblem => value instanceof CellProblem;
const error = (code: "#VALUE!" | "#N/A" | "#DIV/0!" | "#NUM!"): CellProblem => new CellProblem(code, "");

function evaluate(expression: Expression | undefined, at: ValueAt): Plain | Table {
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

/** A number in a text has up to 15 figures. */
const textOf = (value: Plain): string => (typeof value === "number" ? String(Number(value.toPrecision(15))) : value === null ? "" : String(value));

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

function elementwise(one: Plain | Table, other: Plain | Table, of: (one: Plain, other: Plain) => Plain): Plain | Table {
  if (!isTable(one) && !isTable(other)) return of(one, other);
  const [first, second] = [one, other].map((value) => (row: number, column: number) => (isTable(value) ? (value[row]?.[column] ?? null) : value));
  const shape = isTable(one) ? one : (other as Table);
  return shape.map((row, index) => row.map((_, column) => of(first?.(index, column) ?? null, second?.(index, column) ?? null)));
}

/** Numbers come before texts, texts before TRUE and FALSE; a blank is 0 or "" as needed. */
function compared(one: Plain, other: Plain): number {
  const [left, right] = [one ?? (typeof other === "string" ? "" : 0), other ?? (typeof one === "string" ? "" : 0)];
  const rank = (value: Plain): number => ["number", "string", "boolean"].indexOf(typeof value);
  if (rank(left) !== rank(right)) return rank(left) - rank(right);
  const [low, high] = [left, right].map((value) => (typeof value === "string" ? value.toLowerCase() : Number(value))) as [number, number];
  return low < high ? -1 : low > high ? 1 : 0;
}

const number = (value: Plain): number | CellProblem => (typeof value === "string" || isError(value) ? error("#VALUE!") : Number(value));

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
type Worked = Exclude<BuiltIn, "IF" | "IFERROR" | OfPlace>;
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

const all = (values: readonly (Plain | Table)[]): Plain[] => values.flatMap((value) => (isTable(value) ? value.flat() : [value]));
const numbersIn = (values: readonly (Plain | Table)[]): number[] => all(values).filter((value) => typeof value === "number");

/** Of the numbers among the arguments; an error among them is the answer. */
const ofNumbers =
  (of: (numbers: readonly number[]) => Plain) =>
  (...values: (Plain | Table)[]): Plain =>
    all(values).find(isError) ?? of(numbersIn(values));

/** Of plain values, one an argument; an error among them is the answer. */
const ofValues =
  (of: (...values: number[]) => Plain) =>
  (...values: (Plain | Table)[]): Plain => {
    const plain = values.map((value) => (isTable(value) ? error("#VALUE!") : number(value)));
    return (
      (values.find((value) => !isTable(value) && isError(value)) as CellProblem | undefined) ?? plain.find(isError) ?? of(...(plain as number[]))
    );
  };

const each = (of: (value: Plain) => Plain) => (value: Plain | Table | undefined) => elementwise(value ?? null, null, of);

/** Half away from zero, as the decimal that is shown. */
function rounded(value: number, decimals: number): number {
  const shifted = Number(`${Math.abs(value)}e${decimals}`);
  const whole = Math.round(Number.isNaN(shifted) ? Math.abs(value) * 10 ** decimals : shifted);
  return (Math.sign(value) * whole) / 10 ** decimals;
}

const mean = (numbers: readonly number[]): number => numbers.reduce((sum, value) => sum + value, 0) / numbers.length;

const texts =
  (of: (text: string, ...numbers: number[]) => Plain) =>
  (value: Plain | Table = null, ...numbers: (Plain | Table)[]): Plain => {
    const failed = [value, ...numbers].find((one) => !isTable(one) && isError(one));
    return failed === undefined ? of(textOf(value as Plain), ...numbers.map(Number)) : (failed as Plain);
  };

/** Whether a text is that of a criterion, in which * stands for any characters and ? for one. */
function matches(value: Plain, wanted: Plain): boolean {
  if (typeof value !== "string" || typeof wanted !== "string") return value !== null && value === wanted;
  const pattern = wanted
    .replace(/[.+^${}()|[\]\\]/g, "\\$&")
    .replaceAll("*", "[^]*")
    .replaceAll("?", "[^]");
  return new RegExp(`^${pattern}$`, "i").test(value);
}

const MINUTES_PER_DAY = 1440;
const minutesOf = (time: number): number => Math.floor((time - Math.floor(time)) * MINUTES_PER_DAY + 1e-6);

const builtIn: Readonly<Record<Worked, (...values: (Plain | Table)[]) => Plain | Table>> = {
  AND: (...values) => all(values).find(isError) ?? all(values).every(Boolean),
  OR: (...values) => all(values).find(isError) ?? all(values).some(Boolean),
  ISNUMBER: each((value) => typeof value === "number"),
  ISBLANK: each((value) => value === null),
  ISTEXT: each((value) => typeof value === "string"),
  ISERROR: each(isError),
  COUNT: (...values) => numbersIn(values).length,
  COUNTA: (...values) => all(values).filter((value) => value !== null).length,
  COUNTIF: (range = [], wanted = null) => all([range]).filter((value) => !isError(value) && matches(value, wanted as Plain)).length,
  INDEX: (table = [], row = null, column = 1) => {
    if (!isTable(table)) return table;
    const [down, right] = [Number(row), Number(column)];
    if (down === 0) return table;
    return table[down - 1]?.[right - 1] ?? (down >= 1 && down <= table.length ? null : error("#VALUE!"));
  },
  MATCH: (wanted = null, range = []) => {
    const found = all([range]).findIndex(
      (value) => wanted !== null && value !== null && !isError(value) && typeof value === typeof wanted && compared(value, wanted as Plain) === 0,
    );
    return isError(wanted as Plain) ? (wanted as Plain) : found === -1 ? error("#N/A") : found + 1;
  },
  SUM: ofNumbers((numbers) => numbers.reduce((sum, value) => sum + value, 0)),
  SUMPRODUCT: ofNumbers((numbers) => numbers.reduce((sum, value) => sum + value, 0)),
  MAX: ofNumbers((numbers) => (numbers.length === 0 ? 0 : Math.max(...numbers))),
  MIN: ofNumbers((numbers) => (numbers.length === 0 ? 0 : Math.min(...numbers))),
  AVERAGE: ofNumbers((numbers) => (numbers.length === 0 ? error("#DIV/0!") : mean(numbers))),
  STDEV: ofNumbers((numbers) =>
    numbers.length < 2 ? error("#DIV/0!") : Math.sqrt(numbers.reduce((sum, value) => sum + (value - mean(numbers)) ** 2, 0) / (numbers.length - 1)),
  ),
  MOD: ofValues((value, by) => (by === 0 ? error("#DIV/0!") : value - by * Math.floor(value / by))),
  ROUND: (value = null, decimals = 0) =>
    elementwise(value, null, (one) => {
      const plain = number(one);
      return isError(plain) ? plain : rounded(plain, Number(decimals));
    }),
  ROUNDUP: ofValues((value, decimals) => {
    const shifted = Number((value * 10 ** decimals).toPrecision(15));
    return (Math.sign(value) * Math.ceil(Math.abs(shifted))) / 10 ** decimals;
  }),
  INT: ofValues(Math.floor),
  ABS: (value = null) =>
    elementwise(value, null, (one) => {
      const plain = number(one);
      return isError(plain) ? plain : Math.abs(plain);
    }),
  MEDIAN: ofNumbers((numbers) => {
    const sorted = [...numbers].sort((one, other) => one - other);
    const [low, high] = [sorted[Math.ceil(sorted.length / 2) - 1], sorted[Math.floor(sorted.length / 2)]];
    return low === undefined || high === undefined ? error("#NUM!") : (low + high) / 2;
  }),
  NA: () => error("#N/A"),
  // Two-sided, as in spreadsheets.
  TINV: ofValues((outside, degrees) => (degrees < 1 ? error("#NUM!") : jStat.studentt.inv(1 - outside / 2, degrees))),
  N: (value = null) => {
    const one = isTable(value) ? (value[0]?.[0] ?? null) : value;
    return isError(one) || typeof one === "number" ? one : one === true ? 1 : 0;
  },
  CHAR: ofValues((code) => String.fromCharCode(code)),
  HOUR: ofValues((time) => Math.floor(minutesOf(time) / 60)),
  MINUTE: ofValues((time) => minutesOf(time) % 60),
  SQRT: ofValues((value) => (value < 0 ? error("#NUM!") : Math.sqrt(value))),
  LOG10: ofValues((value) => (value <= 0 ? error("#NUM!") : Math.log10(value))),
  FIXED: ofValues((value, decimals) => rounded(value, decimals).toFixed(Math.max(0, decimals))),
  LEFT: texts((text, count = 1) => text.slice(0, count)),
  RIGHT: texts((text, count = 1) => text.slice(-count)),
  MID: texts((text, from = 1, count = 0) => text.slice(from - 1, from - 1 + count)),
  FIND: (wanted = null, text = null) => {
    const [part, whole] = [wanted as Plain, text as Plain];
    if (isError(whole)) return whole;
    const found = textOf(whole).indexOf(textOf(part));
    return found === -1 ? error("#VALUE!") : found + 1;
  },
};
