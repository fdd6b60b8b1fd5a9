import type { AstExpression } from "@borgar/fx";
import { everyFunction } from "../../functions/catalogue";
import { takesRanges } from "../../functions/cellFunction";
import { areaNamed } from "../../workbook/areaNamed";
import { catalogueName } from "../catalogueName";
import { CannotWrite } from "./CannotWrite";
import { formulaTree, type Part } from "./formulaTree";
import { GIVES_ONE, NEWER, REFERS_UNSEEN, WORKS_ON_EACH } from "./functionKinds";
import { cellsReferred, tableCellsReferred, type Referred } from "./reference";
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
      return sizeOfReference(part, scope);
    case "UnaryExpression":
      return part.operator === "@" ? ONE : part.operator === "#" ? areaReferred(part, scope).area : sizeOf(part.arguments[0], scope);
    case "BinaryExpression":
      if ([":", " ", ","].includes(part.operator)) throw new CannotWrite("unknownSize");
      return commonSize(part.arguments.map((one) => sizeOf(one, scope)));
    case "CallExpression":
      return sizeOfCall(part, scope);
    case "LetExpression":
      return sizeOf(part.body, scopeOfLet(part, scope));
    default:
      throw new CannotWrite("unknownSize");
  }
}

export type Let = Extract<AstExpression, { type: "LetExpression" }>;
export type Call = Extract<AstExpression, { type: "CallExpression" }>;

/** The scope of a LET's last part, each variable known to it. */
export function scopeOfLet({ declarations }: Let, scope: Scope): Scope {
  let inside = scope;
  for (const { id, init } of declarations) {
    const variables = new Map(inside.variables).set(id.name.toLowerCase(), {
      value: init,
      scope: inside,
      isKept: scope.options.newerFunctions === true,
    });
    inside = within(inside, { variables });
  }
  return inside;
}

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
  if (variable !== undefined) return sizeOf(variable.value, variable.scope);
  if (part.kind !== "name") return areaReferred(part, scope).area;
  const named = namedFormula(scope.tree.textOf(part), scope);
  return sizeOf(named.tree.root, named);
}

// A name that leads round in a circle is none.
const MOST_NAMES = 20;

/** What a defined name stands for, taken apart, in a scope of its own. @throws CannotWrite where it is not known */
export function namedFormula(text: string, scope: Scope): Scope {
  const [, quoted, bare, name = text] = /^(?:'((?:[^']|'')*)'|([^'!]+))!(.+)$/.exec(text) ?? [];
  const sheet = quoted?.replaceAll("''", "'") ?? bare ?? scope.place.sheet;
  const formula = scope.place.nameOf(name, sheet);
  const tree = formula === undefined ? undefined : formulaTree(formula.startsWith("=") ? formula : `=${formula}`);
  const depth = (scope as NamedScope).depth ?? 0;
  if (tree === undefined || depth > MOST_NAMES) throw new CannotWrite("unknownName");
  const named: NamedScope = { ...scope, tree, variables: new Map(), depth: depth + 1 };
  return named;
}

interface NamedScope extends Scope {
  readonly depth?: number;
}

/** The cells of a reference, a spill or a table's column. @throws CannotWrite where they are not known */
export function areaReferred(part: AstExpression, scope: Scope): Referred {
  if (part.type === "UnaryExpression" && part.operator === "#") return spillReferred(part.arguments[0], scope);
  if (part.type !== "ReferenceIdentifier") throw new CannotWrite("unknownSize");
  const text = scope.tree.textOf(part);
  const found = part.kind === "table" ? tableCellsReferred(text, scope.place) : cellsReferred(text, scope.place.sheet);
  if (found === undefined) throw new CannotWrite("unknownName");
  if (found.lastSheet !== undefined) throw new CannotWrite("severalSheets");
  return found;
}

export function spillReferred(anchor: Part, scope: Scope): Referred {
  if (anchor?.type !== "ReferenceIdentifier") throw new CannotWrite("unknownSize");
  const cell = cellsReferred(scope.tree.textOf(anchor), scope.place.sheet);
  const text = scope.tree.textOf(anchor).replaceAll("$", "").split("!").at(-1) ?? "";
  const area = cell?.sheet === undefined ? undefined : scope.place.spillOf(cell.sheet, text.toUpperCase());
  if (cell === undefined || area === undefined) throw new CannotWrite("unknownSize");
  return { sheet: cell.sheet, area: areaNamed(area), isWhole: false };
}

function sizeOfCall(call: Call, scope: Scope): Size {
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
  if (REFERS_UNSEEN.has(name)) throw new CannotWrite("unseen");
  const sizes = call.arguments.map((one) => sizeOf(one, scope));
  if (WORKS_ON_EACH.has(name)) return commonSize(sizes);
  if (NEWER.has(name) || !sizes.every(isOne)) throw new CannotWrite("unknownSize");
  return ONE;
}
