import type { AstExpression } from "@borgar/fx";
import { CellError, BLANK, type CellValue } from "../../../inputs/CellValue";
import { nameCalled, type Call, type Let } from "../../../sharing/plain/formula/parts";
import { cellsOfCall, definitionOf } from "../../formula/calledFunction";
import { isSingle, oneCell, valueAt, type Cells, onlyValue } from "../../formula/Cells";
import { isTooDeep } from "../../formula/everyPart";
import { each, workedOut, type Arguments, type Rules } from "../../formula/workedOut";
import type { Certain } from "./certain";
import type { Given } from "./Given";
import { builtInSurely, isWorkedOutSurely, TAKES_ARRAYS } from "./builtInSurely";
import { SURE_BINARY, SURE_UNARY } from "./sureOperators";
import { CHOICES } from "./sureChoices";
import { LAMBDA_HELPERS } from "./sureLambdas";
import { subtotal } from "./sureSubtotal";
import { variableOf, type Callable, type SureSurroundings, type Variable } from "./SureSurroundings";

// Works on arrays wherever it stands; other functions take one cell of what an operator makes of a range, or all of it, as the file says.
const OVER_ARRAYS = "SUMPRODUCT";
// Those that take a reference to several sheets (Excel's own list, "Create a reference to the same cell range on multiple worksheets", from memory).
const OVER_SHEETS = /^(?:SUM|AVERAGE|COUNT|COUNTA|MIN|MAX|PRODUCT|STDEV(?:P|\.P|\.S)?|VAR(?:P|\.P|\.S)?)$/;
// How files write D1# and @.
const [SPILL, ONE_OF_ALL] = ["ANCHORARRAY", "SINGLE"];
const SUBTOTALS: ReadonlySet<string> = new Set(["SUBTOTAL", "AGGREGATE"]);
// Calls of LAMBDAs in one formula, and of one within another; own bounds, beyond what a person waits for and what the stack holds.
const [MOST_CALLS, DEEPEST_CALL] = [100_000, 60];

/**
 * What an expression gives in every spreadsheet, from what its cells hold: conditions are worked out, and days, chance, other languages' signs, last
 * digits that decide, and functions that programs take differently are left alone.
 * @returns undefined for what is not certain
 */
export const sureValue = (expression: AstExpression, around: SureSurroundings): Certain<Cells> =>
  isTooDeep(expression) ? undefined : workedOut(expression, rulesIn(around, true));

/** @param isOverArrays false where a range behind an operator may be taken for one of its cells */
const rulesIn = (around: SureSurroundings, isOverArrays: boolean): Rules => ({
  referred: (text, isSpill) => referred(text, isSpill, around),
  element: (part) => onlyValue(workedOut(part, rulesIn(around, false))),
  unary: (operator, of) => byCells(SURE_UNARY[operator], [of], isOverArrays),
  binary: (operator, left, right) => byCells(SURE_BINARY[operator], [left, right], isOverArrays),
  called: (name, given, call) => called(name, given, call, around, isOverArrays),
  letting: (part) => letting(part, around, isOverArrays),
  intersected: (part) => intersected(part, around, isOverArrays),
});

function referred(text: string, isSpill: boolean, around: SureSurroundings): Certain<Cells> {
  const variable = around.variables?.get(text.toLowerCase());
  return variable === undefined ? around.referred(text, isSpill) : isSpill ? undefined : variable.cells;
}

const firstError = (...values: readonly CellValue[]): CellError | undefined => values.find((value): value is CellError => value instanceof CellError);

type Operation = (one: CellValue, other: CellValue) => Certain<CellValue>;

/** Cell by cell; undefined as soon as one is uncertain. */
function byCells(operation: Operation | undefined, operands: readonly Cells[], isOverArrays: boolean): Certain<Cells> {
  if (operation === undefined || (!isOverArrays && !operands.every(isSingle))) return undefined;
  const rows = Math.max(...operands.map((cells) => cells.length));
  const columns = Math.max(...operands.map((cells) => cells[0]?.length ?? 1));
  const missing = new CellError("#N/A");
  const places = Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (__, column) => ({ row, column })));
  return each(places, (line) =>
    each(line, (place) => {
      const [one = missing, other = BLANK] = operands.map((cells) => valueAt(cells, place) ?? missing);
      return firstError(one, other) ?? operation(one, other);
    }),
  );
}

function called(callee: string, given: Arguments, call: Call, around: SureSurroundings, isOverArrays: boolean): Certain<Cells> {
  const name = callee.toUpperCase();
  const variable = callee === "" ? undefined : around.variables?.get(callee.toLowerCase());
  if (callee === "" || variable !== undefined) {
    const callable = variable === undefined ? callableOf(call.callee as unknown as AstExpression, around) : variable.calls;
    const values = callable && each(given, (part) => variableFor(part, around, isOverArrays));
    return callable && values && applied(callable, values, around);
  }
  if (name === SPILL) return given.length === 1 && given[0]?.type === "ReferenceIdentifier" ? referred(given[0].value, true, around) : undefined;
  if (name === ONE_OF_ALL) return given[0] ? intersected(given[0], around, isOverArrays) : undefined;
  if (SUBTOTALS.has(name)) return subtotal(name, given, (part) => part ? workedOut(part, rulesIn(around, false)) : undefined, (part, areHiddenLeft) => countedIn(part, around, areHiddenLeft)); // prettier-ignore
  const definition = definitionOf(callee);
  const choice = definition === undefined ? CHOICES[name] : undefined;
  if (choice !== undefined) {
    const worked = (part: AstExpression | null): Certain<Cells> => (part === null ? oneCell(0) : workedOut(part, rulesIn(around, isOverArrays)));
    return choice(given, worked, isOverArrays);
  }
  const rules = rulesIn(around, definition !== undefined || name === OVER_ARRAYS || TAKES_ARRAYS.has(name) || around.isOverArrays === true);
  const helper = LAMBDA_HELPERS[name];
  if (helper !== undefined) {
    const callable = callableOf(given.at(-1), around);
    const arrays = each(given.slice(0, -1), (part) => (part === null ? undefined : workedOut(part, rules)));
    return callable && arrays && helper(arrays, (...of) => applied(callable, of.map((cells) => ({ cells, isReference: false })), around)); // prettier-ignore
  }
  const lambda = definition === undefined && !isWorkedOutSurely(name) ? around.lambdaNamed?.(callee) : undefined;
  if (lambda !== undefined) {
    const values = each(given, (part) => variableFor(part, around, isOverArrays));
    // What it names where it stands is not known there.
    return values && applied({ lambda, around: { ...around, variables: new Map() } }, values, around);
  }
  const read = each(given, (part) => (part === null ? null : (onSheets(name, part, around) ?? workedOut(part, rules))));
  if (read === undefined) return undefined;
  if (definition !== undefined) return cellsOfCall(definition, read, around.blankAs);
  return builtInSurely(name, read.map((cells, place): Given | null => cells && { cells, isReference: isReference(given[place], around) }), isOverArrays); // prettier-ignore
}

/** Sheets whose names look like cells are taken apart as a range from one to the other. */
function onSheets(name: string, part: AstExpression, { onSheets: of }: SureSurroundings): Certain<Cells> {
  if (!OVER_SHEETS.test(name)) return undefined;
  if (part.type === "ReferenceIdentifier") return part.value.includes("!") ? of(part.value) : undefined;
  if (part.type !== "BinaryExpression" || part.operator !== ":") return undefined;
  const [first, last] = part.arguments.map((end) => (end.type === "ReferenceIdentifier" ? end.value : ""));
  const [, sheet, cells] = /^([^!']+)!([^!]+)$/.exec(last ?? "") ?? [];
  return first === undefined || sheet === undefined || first.includes("!") ? undefined : of(`'${first}:${sheet}'!${cells}`);
}

/** True for cells of a sheet, in which functions pass over texts. */
function isReference(part: AstExpression | null | undefined, around: SureSurroundings): boolean {
  if (part?.type === "ReferenceIdentifier") return variableOf(part, around)?.isReference ?? true;
  if (part?.type === "CallExpression") return nameCalled(part).toUpperCase() === SPILL;
  return (part?.type === "BinaryExpression" && part.operator === ":") || (part?.type === "UnaryExpression" && part.operator === "#");
}

/** The single value of a part. */

/** Of cells, the one in the row or column of the formula; of what a function gives, the first. */
function intersected(part: AstExpression, around: SureSurroundings, isOverArrays: boolean): Certain<Cells> {
  const anchor = spillAt(part);
  const of = anchor ?? (part.type === "ReferenceIdentifier" ? part.value : undefined);
  if (of !== undefined && around.variables?.has(of.toLowerCase()) !== true) {
    const value = around.intersected?.(of, anchor !== undefined);
    if (value !== undefined) return oneCell(value);
  }
  const cells = workedOut(part, rulesIn(around, isOverArrays));
  if (cells === undefined || isSingle(cells)) return cells;
  const isTable = part.type === "CallExpression" && definitionOf(nameCalled(part)) !== undefined;
  return isTable ? oneCell(cells[0]?.[0] ?? BLANK) : undefined;
}

function countedIn(part: AstExpression, around: SureSurroundings, areHiddenLeft: boolean): Certain<Cells> {
  const anchor = spillAt(part);
  const of = anchor ?? (part.type === "ReferenceIdentifier" ? part.value : undefined);
  return of === undefined || around.variables?.has(of.toLowerCase()) === true ? undefined : around.counted?.(of, anchor !== undefined, areHiddenLeft);
}

function spillAt(part: AstExpression): string | undefined {
  const isSpill = (part.type === "UnaryExpression" && part.operator === "#") || (part.type === "CallExpression" && nameCalled(part).toUpperCase() === SPILL); // prettier-ignore
  const [anchor] = isSpill ? part.arguments : [];
  return anchor?.type === "ReferenceIdentifier" ? anchor.value : undefined;
}

function letting({ declarations, body }: Let, around: SureSurroundings, isOverArrays: boolean): Certain<Cells> {
  let inside = around;
  for (const { id, init } of declarations) {
    const value = init && variableFor(init, inside, isOverArrays);
    if (!value) return undefined;
    inside = { ...inside, variables: new Map([...(inside.variables ?? []), [id.name.toLowerCase(), value]]) };
  }
  return body === null ? undefined : workedOut(body, rulesIn(inside, isOverArrays));
}

/** What a variable stands for that gets a part; undefined where that is not certain. */
function variableFor(part: AstExpression | null, around: SureSurroundings, isOverArrays: boolean): Variable | undefined {
  if (part === null) return undefined;
  if (part.type === "LambdaExpression") return { cells: undefined, isReference: false, calls: { lambda: part, around } };
  const same = variableOf(part, around);
  if (same !== undefined) return same;
  const cells = workedOut(part, rulesIn(around, isOverArrays));
  return cells && { cells, isReference: isReference(part, around) };
}

function callableOf(part: AstExpression | null | undefined, around: SureSurroundings): Callable | undefined {
  if (part?.type === "LambdaExpression") return { lambda: part, around };
  if (part?.type !== "ReferenceIdentifier") return undefined;
  const variable = variableOf(part, around);
  if (variable !== undefined) return variable.calls;
  const lambda = around.lambdaNamed?.(part.value);
  return lambda === undefined ? { name: part.value } : { lambda, around: { ...around, variables: new Map() } };
}

function applied(callable: Callable, given: readonly Variable[], from: SureSurroundings): Certain<Cells> {
  if ("name" in callable) {
    const read = each(given, ({ cells, isReference: isOfSheet }) => cells && { cells, isReference: isOfSheet });
    const definition = definitionOf(callable.name);
    if (read === undefined) return undefined;
    if (definition !== undefined) return cellsOfCall(definition, read.map(({ cells }) => cells), from.blankAs); // prettier-ignore
    return builtInSurely(callable.name.toUpperCase(), read, true);
  }
  const { lambda, around } = callable;
  const calls = from.calls ?? { left: MOST_CALLS };
  const depth = (from.depth ?? 0) + 1;
  if (lambda.params.length !== given.length || lambda.body === null || depth > DEEPEST_CALL || calls.left-- <= 0) return undefined;
  const named = lambda.params.map(({ name }, place): [string, Variable] => [name.toLowerCase(), given[place] as Variable]);
  return workedOut(lambda.body, rulesIn({ ...around, calls, depth, variables: new Map([...(around.variables ?? []), ...named]) }, true));
}
