import type { AstExpression } from "@borgar/fx";
import { everyFunction } from "../../../functions/catalogue";
import { takesRanges } from "../../../functions/cellFunction";
import { areaNamed } from "../../../workbook/areaNamed";
import { catalogueName } from "../../catalogueName";
import { CannotWrite } from "./CannotWrite";
import { FoundOnceBy } from "./FoundOnce";
import type { Part } from "../formula/formulaTree";
import { GIVES_ONE, NEWER, REFERS_UNSEEN, WORKS_ON_EACH } from "../formula/functionKinds";
import { hasSubstituted, lambdaNamed, lambdaOf, scopeOfCalled } from "./lambda";
import { namedFormula } from "./named";
import { cellsReferred, tableCellsReferred, type Referred } from "../formula/reference";
import { within, type Scope } from "./Scope";

/** How many rows and columns of values an expression gives. */
export interface Size {
  readonly rows: number;
  readonly columns: number;
}

export const ONE: Size = { rows: 1, columns: 1 };

export const isOne = ({ rows, columns }: Size): boolean => rows === 1 && columns === 1;

/** @throws CannotWrite where it cannot be told */
export function sizeOf(part: Part, scope: Scope): Size {
  switch (part?.type) {
    case undefined:
    case "Literal":
    case "ErrorLiteral":
      return ONE;
    case "ArrayExpression":
      return { rows: part.elements.length, columns: part.elements[0]?.length ?? 1 };
    case "ReferenceIdentifier":
      return part.kind === "name" ? sizes.of(scope.place, part, scope, () => sizeOfReference(part, scope)) : sizeOfReference(part, scope);
    case "UnaryExpression":
      return part.operator === "@" ? ONE : part.operator === "#" ? areaReferred(part, scope).area : sizeOf(part.arguments[0], scope);
    case "BinaryExpression":
      if ([":", " ", ","].includes(part.operator)) return areaReferred(part, scope).area;
      return commonSize(part.arguments.map((one) => sizeOf(one, scope)));
    case "CallExpression":
      return sizes.of(scope.place, part, scope, () => sizeOfCall(part, scope));
    case "LetExpression":
      return sizes.of(scope.place, part, scope, () => sizeOf(part.body, scopeOfLet(part, scope)));
    default:
      throw new CannotWrite("unknownSize");
  }
}

const sizes = new FoundOnceBy<Scope["place"], Size>();

export type Let = Extract<AstExpression, { type: "LetExpression" }>;
export type Call = Extract<AstExpression, { type: "CallExpression" }>;

/** The scope of a LET's last part, each variable known to it. A LAMBDA in one is written where it is called. */
export const scopeOfLet = (part: Let, scope: Scope): Scope => scopes.of(scope.place, part, scope, () => declared(part, scope));

const scopes = new FoundOnceBy<Scope["place"], Scope>();

function declared({ declarations }: Let, scope: Scope): Scope {
  const isKept = isLetKept(scope);
  let inside = scope;
  for (const { id, init } of declarations) {
    const variables = new Map(inside.variables).set(id.name.toLowerCase(), {
      value: init,
      scope: inside,
      isKept: isKept && !isFunction(init, inside),
    });
    inside = within(inside, { variables });
  }
  return inside;
}

export const isLetKept = (scope: Scope): boolean => scope.options.newerFunctions === true && !scope.isQualified && !hasSubstituted(scope);

const isFunction = (part: Part, scope: Scope): boolean =>
  part?.type === "LambdaExpression" || (part?.type === "ReferenceIdentifier" && part.kind === "name" && lambdaNamed(part.value, scope) !== undefined);

/** The largest of sizes that fit one another. @throws CannotWrite where they do not */
function commonSize(sizes: readonly Size[]): Size {
  const rows = Math.max(1, ...sizes.map((size) => size.rows));
  const columns = Math.max(1, ...sizes.map((size) => size.columns));
  const isMisfit = sizes.some((size) => (size.rows !== 1 && size.rows !== rows) || (size.columns !== 1 && size.columns !== columns));
  if (isMisfit) throw new CannotWrite("unknownSize");
  return { rows, columns };
}

function sizeOfReference(part: Extract<AstExpression, { type: "ReferenceIdentifier" }>, scope: Scope): Size {
  const variable = part.kind === "name" ? scope.variables.get(part.value.toLowerCase()) : undefined;
  if (variable?.given !== undefined) return variable.given === "unknown" ? unknown() : variable.given;
  if (variable !== undefined) return sizeOf(variable.value, variable.scope);
  if (part.kind !== "name") return areaReferred(part, scope).area;
  const named = namedFormula(scope.tree.textOf(part), scope);
  return sizeOf(named.tree.root, named);
}

/** The cells of a reference, a spill or a table's column. @throws CannotWrite where they are not known */
export function areaReferred(part: AstExpression, scope: Scope): Referred {
  if (part.type === "UnaryExpression" && part.operator === "#") return spillReferred(part.arguments[0], scope);
  if (part.type === "BinaryExpression" && (part.operator === " " || part.operator === ":")) {
    const [one, other] = part.arguments.map((side) => areaReferred(side, scope));
    return one === undefined || other === undefined ? unknown() : joined(part.operator, one, other);
  }
  if (part.type !== "ReferenceIdentifier") throw new CannotWrite("unknownSize");
  if (part.kind === "name") {
    if (scope.variables.has(part.value.toLowerCase())) return unknown();
    const named = namedFormula(scope.tree.textOf(part), scope);
    return areaReferred(named.tree.root, named);
  }
  const text = scope.tree.textOf(part);
  const found = part.kind === "table" ? tableCellsReferred(text, scope.place) : cellsReferred(text, scope.place.sheet);
  if (found === undefined) throw new CannotWrite("unknownName");
  if (found.lastSheet !== undefined) throw new CannotWrite("severalSheets");
  return found;
}

/** What two references have in common, or all from one to the other. @throws CannotWrite */
function joined(operator: string, one: Referred, other: Referred): Referred {
  if (one.sheet === undefined || one.sheet.toLowerCase() !== other.sheet?.toLowerCase()) return unknown();
  const [first, last] = operator === " " ? [Math.max, Math.min] : [Math.min, Math.max];
  const [row, column] = [first(one.area.row, other.area.row), first(one.area.column, other.area.column)];
  const rows = last(one.area.row + one.area.rows, other.area.row + other.area.rows) - row;
  const columns = last(one.area.column + one.area.columns, other.area.column + other.area.columns) - column;
  return rows > 0 && columns > 0 ? { sheet: one.sheet, area: { row, column, rows, columns }, isWhole: false } : unknown();
}

function unknown(): never {
  throw new CannotWrite("unknownSize");
}

export function spillReferred(anchor: Part, scope: Scope): Referred {
  if (anchor?.type !== "ReferenceIdentifier") return unknown();
  if (anchor.kind === "name") {
    const named = namedFormula(scope.tree.textOf(anchor), scope);
    return spillReferred(named.tree.root, named);
  }
  const cell = cellsReferred(scope.tree.textOf(anchor), scope.place.sheet);
  const text = scope.tree.textOf(anchor).replaceAll("$", "").split("!").at(-1) ?? "";
  const area = cell?.sheet === undefined ? undefined : scope.place.spillOf(cell.sheet, text.toUpperCase());
  if (cell === undefined || area === undefined) throw new CannotWrite("unknownSize");
  return { sheet: cell.sheet, area: areaNamed(area), isWhole: false };
}

function sizeOfCall(call: Call, scope: Scope): Size {
  const lambda = lambdaOf(call, scope);
  if (lambda !== undefined) {
    const inside = scopeOfCalled(call, lambda, scope);
    return inside === undefined ? ONE : sizeOf(lambda.lambda.body, inside);
  }
  const name = call.callee.name?.toUpperCase() ?? "";
  const ours = catalogueName(name);
  if (ours !== undefined) {
    const definition = everyFunction.find((one) => one.name === ours);
    if (definition === undefined) throw new CannotWrite("unknownFunction");
    if (definition.gives === "table") throw new CannotWrite("unknownSize");
    return takesRanges(definition) ? commonSize(call.arguments.map((one) => sizeOf(one, scope))) : ONE;
  }
  if (name === "SINGLE") return ONE;
  if (name === "ANCHORARRAY") return spillReferred(call.arguments[0], scope).area;
  if (GIVES_ONE.has(name)) return ONE;
  const ofArrays = sizeOverArrays(name, call.arguments, scope);
  if (ofArrays !== undefined) return ofArrays;
  if (REFERS_UNSEEN.has(name)) throw new CannotWrite("unseen");
  const sizes = call.arguments.map((one) => sizeOf(one, scope));
  if (WORKS_ON_EACH.has(name)) return commonSize(sizes);
  if (NEWER.has(name) || !sizes.every(isOne)) throw new CannotWrite("unknownSize");
  return ONE;
}

/** Of the functions that go through arrays or make some, where their arguments tell it. */
function sizeOverArrays(name: string, parts: readonly Part[], scope: Scope): Size | undefined {
  const [first] = parts;
  switch (name) {
    case "MAP":
      return commonSize(parts.slice(0, -1).map((one) => sizeOf(one, scope)));
    case "BYROW":
      return { rows: sizeOf(first, scope).rows, columns: 1 };
    case "BYCOL":
      return { rows: 1, columns: sizeOf(first, scope).columns };
    case "SCAN":
      return sizeOf(parts[1], scope);
    case "SORT":
    case "SORTBY":
      return sizeOf(first, scope);
    case "TRANSPOSE": {
      const { rows, columns } = sizeOf(first, scope);
      return { rows: columns, columns: rows };
    }
    case "SEQUENCE":
    case "RANDARRAY":
      return { rows: counted(first), columns: counted(parts[1]) };
    default:
      return undefined;
  }
}

function counted(part: Part): number {
  if (part === null || part === undefined) return 1;
  return part.type === "Literal" && typeof part.value === "number" && part.value >= 1 ? Math.floor(part.value) : unknown();
}
