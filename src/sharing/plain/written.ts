import type { AstExpression } from "@borgar/fx";
import { everyFunction } from "../../functions/catalogue";
import { catalogueName } from "../catalogueName";
import { CannotWrite, LONGEST_FORMULA } from "./CannotWrite";
import { FoundOnceBy } from "./FoundOnce";
import { nameCalled, type Part } from "./formulaTree";
import { COUNTS_ERRORS, GIVES_ONE, NEWER, RANDOM, TIED_TO_ITS_CELL, WORKS_ON_EACH } from "./functionKinds";
import { covers } from "../../workbook/cellArea";
import { cellsReferred, referenceText, sheetText } from "./reference";
import { within, type Scope } from "./Scope";
import { hasSubstituted, lambdaNamed, lambdaOf, scopeOfCalled, type BoundLambda } from "./lambda";
import { nameElsewhere } from "./nameElsewhere";
import { callsOurs, isAbsolute, namedFormula } from "./named";
import { areaReferred, isLetKept, ONE, scopeOfLet, sizeOf, spillReferred, type Call, type Let, type Size } from "./sizeOf";

/** Writes one call of ours; the rewriting gives it, so that the printing of a formula knows nothing of functions. */
export type WriteCall = (call: Call, name: string, scope: Scope) => string;

// How tightly operators bind in a cell formula, the sign before a number tighter than a power.
const BINDS: Readonly<Record<string, number>> = {
  ...{ "=": 1, "<": 1, ">": 1, "<=": 1, ">=": 1, "<>": 1 },
  ...{ "&": 2, "+": 3, "-": 3, "*": 4, "/": 4, "^": 5, ",": 8, " ": 9, ":": 10 },
};
const PERCENT = 6;
const SIGN = 7;
const TIGHTEST = 11;

/** These make one reference of two, for which each is needed whole. */
const JOINS: readonly string[] = [":", " ", ","];

/** The text of one part of a formula, with its own calls written by `writeCall`. @throws CannotWrite, also for one longer than any cell holds */
export function written(part: Part, scope: Scope, writeCall: WriteCall): string {
  const text = mayGrow(part) ? texts.of(writeCall, part, scope, () => writtenAnew(part, scope, writeCall)) : writtenAnew(part, scope, writeCall);
  // What stands for a variable is written wherever that is, so that a few within one another would fill any memory.
  if (text.length > LONGEST_FORMULA) throw new CannotWrite("tooLong");
  return text;
}

const texts = new FoundOnceBy<WriteCall, string>();

/** True for what may be asked for again and again. */
const mayGrow = (part: Part): part is AstExpression =>
  part?.type === "CallExpression" || part?.type === "LetExpression" || (part?.type === "ReferenceIdentifier" && part.kind === "name");

function writtenAnew(part: Part, scope: Scope, writeCall: WriteCall): string {
  switch (part?.type) {
    case undefined:
      return "";
    case "Literal":
    case "ErrorLiteral":
      return scope.tree.textOf(part);
    case "ReferenceIdentifier":
      return reference(part, scope, writeCall);
    case "UnaryExpression":
      return unary(part, scope, writeCall);
    case "BinaryExpression": {
      const binds = BINDS[part.operator] ?? 1;
      const [left, right] = part.arguments;
      const joins = JOINS.includes(part.operator);
      if (joins && scope.isSingle) return firstCell(part, scope);
      const inside = joins ? within(scope, { isOnEach: false }) : scope;
      return `${inBrackets(left, binds, inside, writeCall)}${part.operator}${inBrackets(right, binds + 1, inside, writeCall)}`;
    }
    case "ArrayExpression":
      return scope.isSingle ? scope.tree.textOf(part.elements[0]?.[0] as AstExpression) : scope.tree.textOf(part);
    case "LetExpression":
      return letOrBody(part, scope, writeCall);
    case "CallExpression":
      return called(part, scope, writeCall);
    case "LambdaExpression":
      return keptLambda({ lambda: part, scope }, [], scope, writeCall);
    default:
      throw new CannotWrite("unreadable");
  }
}

function firstCell(part: AstExpression, scope: Scope): string {
  const { sheet, area } = areaReferred(part, scope);
  return referenceText({ ...area, rows: 1, columns: 1 }, sheet, scope.isQualified ? undefined : scope.place.sheet);
}

function inBrackets(part: Part, binds: number, scope: Scope, writeCall: WriteCall): string {
  const text = written(part, scope, writeCall);
  return bindsOf(part) < binds ? `(${text})` : text;
}

function bindsOf(part: Part): number {
  if (part?.type === "BinaryExpression") return BINDS[part.operator] ?? 1;
  if (part?.type === "UnaryExpression") return part.operator === "%" ? PERCENT : part.operator === "#" ? TIGHTEST : SIGN;
  return TIGHTEST;
}

function reference(part: Extract<AstExpression, { type: "ReferenceIdentifier" }>, scope: Scope, writeCall: WriteCall): string {
  const text = scope.tree.textOf(part);
  if (part.kind === "name") {
    const variable = scope.variables.get(part.value.toLowerCase());
    if (variable === undefined) {
      const named = namedFormula(text, scope);
      if (scope.options.areNamesWrittenOut === true || callsOurs(named)) return writtenOut(named, writeCall);
      const here = scope.isQualified ? nameElsewhere(text, named, scope) : text;
      return scope.isSingle ? singleName(here, named) : here;
    }
    if (variable.isKept && !scope.isQualified) return part.value;
    if (variable.given !== undefined) throw new CannotWrite("argumentForm");
    return `(${written(variable.value, { ...variable.scope, isSingle: scope.isSingle, isQualified: scope.isQualified }, writeCall)})`;
  }
  const cutColumn = part.kind === "beam" && scope.isOnEach ? wholeColumnCut(part, scope) : undefined;
  if (cutColumn !== undefined) return cutColumn;
  if (!scope.isSingle && !scope.isQualified) return text;
  if (!scope.isSingle && part.kind !== "table") return text.includes("!") ? text : `${sheetText(scope.place.sheet)}!${text}`;
  const { sheet, area } = areaReferred(part, scope);
  if (!scope.isSingle && /@|#This Row/i.test(text)) return referenceText(area, sheet, undefined);
  if (!scope.isSingle) return text.startsWith("[") ? `${scope.place.tableOf("")?.name ?? ""}${text}` : text;
  if (area.rows * area.columns === 1) return scope.isQualified ? referenceText(area, sheet, undefined) : text;
  return referenceText({ ...area, rows: 1, columns: 1 }, sheet, scope.isQualified ? undefined : scope.place.sheet);
}

/** What a defined name stands for, in its place. */
function writtenOut(named: Scope, writeCall: WriteCall): string {
  if (!isAbsolute(named.tree)) throw new CannotWrite("unknownName");
  const text = written(named.tree.root, named, writeCall);
  return named.tree.root.type === "ReferenceIdentifier" ? text : `(${text})`;
}

function singleName(text: string, named: Scope): string {
  if (named.tree.root.type !== "ReferenceIdentifier" || named.tree.root.kind !== "range") return text;
  const { sheet, area } = areaReferred(named.tree.root, named);
  return area.rows * area.columns === 1 ? text : referenceText({ ...area, rows: 1, columns: 1 }, sheet, undefined);
}

/** A whole column as far down as the spill of the formula goes. */
function wholeColumnCut(part: AstExpression, { tree, place, isQualified }: Scope): string | undefined {
  const found = cellsReferred(tree.textOf(part), place.sheet);
  const spilled = cellsReferred(place.area, place.sheet);
  if (found?.sheet === undefined || found.area.row !== 0 || spilled === undefined) return undefined;
  return referenceText({ ...found.area, rows: spilled.area.rows }, found.sheet, isQualified ? undefined : place.sheet);
}

function unary(part: Extract<AstExpression, { type: "UnaryExpression" }>, scope: Scope, writeCall: WriteCall): string {
  const [inner] = part.arguments;
  switch (part.operator) {
    case "#":
      return spill(part, scope);
    case "@":
      // A range behind @ is cut by the row or column of the cell, an array gives its first value.
      if (inner?.type === "ReferenceIdentifier" && !isVariable(inner, scope)) return intersection(inner, scope);
      return inBrackets(inner, SIGN, within(scope, { isSingle: true }), writeCall);
    case "%":
      return `${inBrackets(inner, PERCENT, scope, writeCall)}%`;
    default:
      return `${part.operator}${inBrackets(inner, SIGN, scope, writeCall)}`;
  }
}

const isVariable = (part: Extract<AstExpression, { type: "ReferenceIdentifier" }>, scope: Scope): boolean =>
  part.kind === "name" && scope.variables.has(part.value.toLowerCase());

/** The cell of a range that stands in the row or column of the formula: a file holds no @, and older programs know none. */
function intersection(part: Extract<AstExpression, { type: "ReferenceIdentifier" }>, scope: Scope): string {
  const named = part.kind === "name" ? namedFormula(scope.tree.textOf(part), scope) : scope;
  const { sheet, area } = areaReferred(part.kind === "name" ? named.tree.root : part, named);
  if (area.rows * area.columns === 1 && part.kind !== "name" && !scope.isQualified) return scope.tree.textOf(part);
  const own = cellsReferred(scope.place.cell, scope.place.sheet)?.area ?? { row: 0, column: 0 };
  const row = area.rows === 1 ? area.row : own.row;
  const column = area.columns === 1 ? area.column : own.column;
  if ((area.rows > 1 && area.columns > 1) || !covers(area, row, column)) return "#VALUE!";
  return referenceText({ row, column, rows: 1, columns: 1 }, sheet, scope.isQualified ? undefined : scope.place.sheet);
}

/** The area that a spill fills: it is as large in the copy, where it is one array formula or single cells. */
function spill(part: AstExpression, scope: Scope): string {
  const { sheet, area } = part.type === "CallExpression" ? spillReferred(part.arguments[0], scope) : areaReferred(part, scope);
  const cells = scope.isSingle ? { ...area, rows: 1, columns: 1 } : area;
  return referenceText(cells, sheet, scope.isQualified ? undefined : scope.place.sheet);
}

function letOrBody(part: Let, scope: Scope, writeCall: WriteCall): string {
  const inside = scopeOfLet(part, scope);
  const body = written(part.body, inside, writeCall);
  if (!isLetKept(scope)) {
    if (part.declarations.some(({ init }) => usesAny(init, RANDOM, scope))) throw new CannotWrite("random");
    return `(${body})`;
  }
  const parts = part.declarations.flatMap(({ id, init }, index) => {
    const after = part.declarations.slice(index + 1).find((one) => one.id.name.toLowerCase() === id.name.toLowerCase());
    if (after !== undefined) throw new CannotWrite("unreadable");
    const variable = inside.variables.get(id.name.toLowerCase());
    return variable?.isKept === true ? [`${id.name},${written(init, variable.scope, writeCall)}`] : [];
  });
  return parts.length === 0 ? `(${body})` : `LET(${[...parts, body].join(",")})`;
}

function called(call: Call, scope: Scope, writeCall: WriteCall): string {
  const lambda = lambdaOf(call, scope);
  if (lambda !== undefined) return calledLambda(call, lambda, scope, writeCall);
  const name = nameCalled(call).toUpperCase();
  // What another call gives is called: a function that only its value knows.
  if (name === "") throw new CannotWrite("newerFunction");
  const variable = scope.variables.get(name.toLowerCase());
  if (variable !== undefined && (!variable.isKept || scope.isQualified)) throw new CannotWrite("newerFunction");
  const ours = catalogueName(name);
  if (ours !== undefined) return writeCall(call, ours, scope);
  if (name === "SINGLE") return written({ type: "UnaryExpression", operator: "@", arguments: call.arguments }, scope, writeCall);
  if (name === "ANCHORARRAY") return spill(call, scope);
  if (NEWER.has(name) && scope.options.newerFunctions !== true) throw new CannotWrite("newerFunction");
  if (scope.isQualified && isTiedToItsCell(name, call)) throw new CannotWrite("argumentForm");
  const inside = WORKS_ON_EACH.has(name) ? scope : within(scope, { isOnEach: false, isSingle: GIVES_ONE.has(name) ? false : scope.isSingle });
  if (scope.isSingle && !WORKS_ON_EACH.has(name) && !GIVES_ONE.has(name)) throw new CannotWrite("unknownSize");
  const link = scope.tree.linkOf(call.callee.loc?.[0]);
  const texts = call.arguments.map((one, index) => {
    const handed = index === call.arguments.length - 1 ? functionHanded(one, inside) : undefined;
    return handed === undefined ? argument(one, inside, writeCall) : keptLambda(handed, handedSizes(name, call.arguments, inside), inside, writeCall);
  });
  const text = `${link}${call.callee.name}(${texts.join(",")})`;
  // A table of ours in error is one error, and not a table of errors.
  const tables = COUNTS_ERRORS.has(name) ? texts.filter((_, index) => holdsTable(call.arguments[index])) : [];
  return tables.reduceRight((rest, table) => `IF(ISERROR(INDEX(${table},1,1)),INDEX(${table},1,1),${rest})`, text);
}

function holdsTable(part: Part): boolean {
  if (part?.type !== "CallExpression") return false;
  const ours = catalogueName(part.callee.name?.toUpperCase() ?? "");
  return everyFunction.some(({ name, gives }) => name === ours && gives === "table") || part.arguments.some(holdsTable);
}

/** The LAMBDA that a function is handed as its last argument. */
function functionHanded(part: Part, scope: Scope): BoundLambda | undefined {
  if (part?.type === "LambdaExpression") return { lambda: part, scope };
  return part?.type === "ReferenceIdentifier" && part.kind === "name" ? lambdaNamed(part.value, scope) : undefined;
}

/** What MAP and its like hand to the function at their end, one after the other. */
function handedSizes(name: string, parts: readonly Part[], scope: Scope): readonly (Size | "unknown")[] {
  switch (name) {
    case "BYROW":
      return [{ rows: 1, columns: sizeOf(parts[0], scope).columns }];
    case "BYCOL":
      return [{ rows: sizeOf(parts[0], scope).rows, columns: 1 }];
    // What has come together so far may be an array.
    case "REDUCE":
      return ["unknown", ONE];
    default:
      return [];
  }
}

/**
 * A LAMBDA that stays one, its parameters written by their names.
 * @param sizes what the parameters are handed, one value where nothing is said
 */
function keptLambda({ lambda, scope: outer }: BoundLambda, sizes: readonly (Size | "unknown")[], here: Scope, writeCall: WriteCall): string {
  if (here.options.newerFunctions !== true) throw new CannotWrite("newerFunction");
  if (here.isQualified) throw new CannotWrite("argumentForm");
  const names = lambda.params.map(({ name }) => name);
  const isShadowing = names.some((name) => here.variables.has(name.toLowerCase()) || outer.variables.has(name.toLowerCase()));
  if (isShadowing && (hasSubstituted(outer) || hasSubstituted(here))) throw new CannotWrite("newerFunction");
  const variables = new Map(outer.variables);
  names.forEach((name, index) => variables.set(name.toLowerCase(), { value: undefined, scope: outer, isKept: true, given: sizes[index] ?? ONE }));
  const body = written(lambda.body, within(outer, { variables, isSingle: false, isOnEach: false, isQualified: false }), writeCall);
  return `LAMBDA(${[...names, body].join(",")})`;
}

/** ROW() means the cell that it stands in, ROW(B7) the same everywhere. */
const isTiedToItsCell = (name: string, call: Call): boolean =>
  TIED_TO_ITS_CELL.has(name) && !((name === "ROW" || name === "COLUMN") && call.arguments.length > 0);

/** Several areas as one argument keep their brackets. */
const argument = (part: Part, scope: Scope, writeCall: WriteCall): string =>
  part?.type === "BinaryExpression" && part.operator === "," ? `(${written(part, scope, writeCall)})` : written(part, scope, writeCall);

function calledLambda(call: Call, lambda: BoundLambda, scope: Scope, writeCall: WriteCall): string {
  const inside = scopeOfCalled(call, lambda, scope);
  if (inside === undefined) return "#VALUE!";
  if (call.arguments.some((one) => usesAny(one, RANDOM, scope))) throw new CannotWrite("random");
  return `(${written(lambda.lambda.body, inside, writeCall)})`;
}

/** True where an expression calls one of these functions, also through a variable or a name. */
export function usesAny(part: Part, functions: ReadonlySet<string>, scope: Scope): boolean {
  if (!mayGrow(part)) return usesAnyIn(part, functions, scope);
  const known = used.get(functions) ?? new FoundOnceBy();
  used.set(functions, known);
  return known.of(scope.place, part, scope, () => usesAnyIn(part, functions, scope));
}

const used = new Map<ReadonlySet<string>, FoundOnceBy<Scope["place"], boolean>>();

function usesAnyIn(part: Part, functions: ReadonlySet<string>, scope: Scope): boolean {
  switch (part?.type) {
    case "CallExpression":
      return (
        functions.has(part.callee.name?.toUpperCase()) ||
        calleeUsesAny(part, functions, scope) ||
        part.arguments.some((one) => usesAny(one, functions, scope))
      );
    case "UnaryExpression":
    case "BinaryExpression":
      return part.arguments.some((one) => usesAny(one, functions, scope));
    case "LetExpression":
      return part.declarations.some(({ init }) => usesAny(init, functions, scope)) || usesAny(part.body, functions, scope);
    case "LambdaExpression":
      return usesAny(part.body, functions, scope);
    case "ReferenceIdentifier":
      return part.kind === "name" && nameUsesAny(part.value, functions, scope);
    default:
      return false;
  }
}

/** What is written by the name of a variable is calculated once. */
function nameUsesAny(name: string, functions: ReadonlySet<string>, scope: Scope): boolean {
  const variable = scope.variables.get(name.toLowerCase());
  if (variable !== undefined) return (!variable.isKept || scope.isQualified) && usesAny(variable.value, functions, variable.scope);
  if (scope.place.nameOf(name, scope.place.sheet) === undefined) return false;
  try {
    const named = namedFormula(name, scope);
    return usesAny(named.tree.root, functions, named);
  } catch (thrown) {
    if (thrown instanceof CannotWrite) return false;
    throw thrown;
  }
}

function calleeUsesAny(call: Call, functions: ReadonlySet<string>, scope: Scope): boolean {
  const { name } = call.callee as { readonly name?: string };
  return name === undefined ? usesAny(call.callee as unknown as Part, functions, scope) : nameUsesAny(name, functions, scope);
}
