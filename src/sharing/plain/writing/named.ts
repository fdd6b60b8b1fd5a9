import { catalogueName } from "../../catalogueName";
import { anyPart, nameCalled } from "../formula/parts";
import { CannotWrite } from "./CannotWrite";
import { formulaTree, type FormulaTree } from "../formula/formulaTree";
import { NO_VARIABLES, type Scope } from "./Scope";
import type { Surroundings } from "../reading/Surroundings";

// A name that leads round in a circle is none.
const MOST_NAMES = 20;

/** What a defined name stands for, taken apart, in a scope of its own. @throws CannotWrite where it is not known */
export function namedFormula(text: string, scope: Scope): Scope {
  const formula = formulaNamed(text, scope.place);
  const tree = formula === undefined ? undefined : treeOf(formula, scope.place.nameOf);
  const { depth = 0 } = scope;
  if (tree === undefined || depth > MOST_NAMES) throw new CannotWrite("unknownName");
  return { ...scope, tree, variables: NO_VARIABLES, depth: depth + 1 };
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

/** True where a formula calls one of our functions, itself or through a defined name, each of which is looked into once. */
export function callsOurs({ tree, place }: Scope): boolean {
  const [ahead, seen] = [[tree], new Set<string>()];
  const followed = (text: string): void => {
    const formula = text === "" ? undefined : formulaNamed(text, place);
    if (formula === undefined || seen.has(formula)) return;
    seen.add(formula);
    const named = treeOf(formula, place.nameOf);
    if (named !== undefined) ahead.push(named);
  };
  for (let next = ahead.pop(); next !== undefined; next = ahead.pop()) {
    const { root, textOf } = next;
    const isOurs = anyPart(root, (part) => {
      if (part?.type === "CallExpression") {
        if (catalogueName(nameCalled(part)) !== undefined) return true;
        followed(nameCalled(part));
      } else if (part?.type === "ReferenceIdentifier" && part.kind === "name") followed(textOf(part));
      return false;
    });
    if (isOurs) return true;
  }
  return false;
}

/** True where no reference in a name means another cell in each cell that uses the name. */
export const isAbsolute = ({ root, textOf }: FormulaTree): boolean =>
  !anyPart(root, (part) => part?.type === "ReferenceIdentifier" && part.kind !== "name" && part.kind !== "table" && !ABSOLUTE.test(textOf(part)));

const ABSOLUTE = /^(?:.*!)?(?:\$[A-Z]+\$\d+(?::\$[A-Z]+\$\d+)?|\$[A-Z]+:\$[A-Z]+|\$\d+:\$\d+)$/i;
