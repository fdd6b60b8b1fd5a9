import { everyFunction } from "../../../functions/catalogue";
import { takesRanges } from "../../../functions/cellFunction";
import { catalogueName } from "../../catalogueName";
import { nameCalled, type Call, type Part, type Reference } from "../formula/parts";
import { areaReferred, spillReferred } from "./areaReferred";
import { CannotWrite } from "./CannotWrite";
import { FoundOnceBy } from "./FoundOnce";
import { GIVES_ONE, NEWER, REFERS_UNSEEN, WORKS_ON_EACH } from "../formula/functionKinds";
import { namedFormula } from "./named";
import type { Scope } from "./Scope";
import { lambdaOf, scopeOfCalled, scopeOfLet } from "./variables";

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

/** The largest of sizes that fit one another. @throws CannotWrite where they do not */
function commonSize(sizes: readonly Size[]): Size {
  const rows = Math.max(1, ...sizes.map((size) => size.rows));
  const columns = Math.max(1, ...sizes.map((size) => size.columns));
  const isMisfit = sizes.some((size) => (size.rows !== 1 && size.rows !== rows) || (size.columns !== 1 && size.columns !== columns));
  if (isMisfit) throw new CannotWrite("unknownSize");
  return { rows, columns };
}

function sizeOfReference(part: Reference, scope: Scope): Size {
  const variable = part.kind === "name" ? scope.variables.get(part.value.toLowerCase()) : undefined;
  if (variable?.given !== undefined) return variable.given === "unknown" ? unknown() : variable.given;
  if (variable !== undefined) return sizeOf(variable.value, variable.scope);
  if (part.kind !== "name") return areaReferred(part, scope).area;
  const named = namedFormula(scope.tree.textOf(part), scope);
  return sizeOf(named.tree.root, named);
}

function sizeOfCall(call: Call, scope: Scope): Size {
  const lambda = lambdaOf(call, scope);
  if (lambda !== undefined) {
    const inside = scopeOfCalled(call, lambda, scope);
    return inside === undefined ? ONE : sizeOf(lambda.lambda.body, inside);
  }
  const name = nameCalled(call).toUpperCase();
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

function unknown(): never {
  throw new CannotWrite("unknownSize");
}
