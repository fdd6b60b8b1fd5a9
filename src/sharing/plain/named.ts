import { catalogueName } from "../catalogueName";
import { CannotWrite } from "./CannotWrite";
import { anyPart, formulaTree, type FormulaTree } from "./formulaTree";
import type { Scope } from "./Scope";
import type { Surroundings } from "./Surroundings";

// A name that leads round in a circle is none.
const MOST_NAMES = 20;

interface NamedScope extends Scope {
  readonly depth?: number;
}

/** What a defined name stands for, taken apart, in a scope of its own. @throws CannotWrite where it is not known */
export function namedFormula(text: string, scope: Scope): Scope {
  const formula = formulaNamed(text, scope.place);
  const tree = formula === undefined ? undefined : treeOf(formula, scope.place.nameOf);
  const depth = (scope as NamedScope).depth ?? 0;
  if (tree === undefined || depth > MOST_NAMES) throw new CannotWrite("unknownName");
  const named: NamedScope = { ...scope, tree, variables: new Map(), depth: depth + 1 };
  return named;
}

/** The formula of a defined name, told with its sheet or without. */
export function formulaNamed(text: string, { sheet, nameOf }: Pick<Surroundings, "sheet" | "nameOf">): string | undefined {
  const [, quoted, bare, name = text] = /^(?:'((?:[^']|'')*)'|([^'!]+))!(.+)$/.exec(text) ?? [];
  return nameOf(name, quoted?.replaceAll("''", "'") ?? bare ?? sheet);
}

/** Names are asked for again and again, and taking a formula apart takes most of the time. */
const trees = new WeakMap<Surroundings["nameOf"], Map<string, FormulaTree | undefined>>();

function treeOf(formula: string, nameOf: Surroundings["nameOf"]): FormulaTree | undefined {
  const known = trees.get(nameOf) ?? new Map<string, FormulaTree | undefined>();
  trees.set(nameOf, known);
  if (!known.has(formula)) known.set(formula, formulaTree(formula.startsWith("=") ? formula : `=${formula}`));
  return known.get(formula);
}

/** True where a formula calls one of our functions, itself or through a defined name. */
export const callsOurs = (scope: Scope): boolean =>
  anyPart(scope.tree.root, (part) => {
    if (part?.type === "CallExpression") return catalogueName(part.callee.name ?? "") !== undefined || isNameOfOurs(part.callee.name ?? "", scope);
    return part?.type === "ReferenceIdentifier" && part.kind === "name" && isNameOfOurs(scope.tree.textOf(part), scope);
  });

function isNameOfOurs(text: string, scope: Scope): boolean {
  const depth = (scope as NamedScope).depth ?? 0;
  return depth <= MOST_NAMES && formulaNamed(text, scope.place) !== undefined && isTaken(text, scope);
}

function isTaken(text: string, scope: Scope): boolean {
  try {
    return callsOurs(namedFormula(text, scope));
  } catch (thrown) {
    if (thrown instanceof CannotWrite) return false;
    throw thrown;
  }
}

/** True where no reference in a name means another cell in each cell that uses the name. */
export const isAbsolute = ({ root, textOf }: FormulaTree): boolean =>
  !anyPart(root, (part) => part?.type === "ReferenceIdentifier" && part.kind !== "name" && part.kind !== "table" && !ABSOLUTE.test(textOf(part)));

const ABSOLUTE = /^(?:.*!)?(?:\$[A-Z]+\$\d+(?::\$[A-Z]+\$\d+)?|\$[A-Z]+:\$[A-Z]+|\$\d+:\$\d+)$/i;
