import { WORKS_ON_EACH } from "../formula/functionKinds";
import { formulaTree } from "../formula/formulaTree";
import { anyPart, nameCalled, type Part } from "../formula/parts";
import type { Surroundings } from "../reading/Surroundings";
import { CannotWrite } from "../writing/CannotWrite";
import { NO_VARIABLES, type Scope } from "../writing/Scope";
import { isOne, sizeOf } from "../writing/sizeOf";

/** True where a formula works on a range cell by cell, as operators and functions of one value do: SUM(A1:A3*2), MAX(LEN(A1:A3)). */
export function worksOverArrays(formula: string, place: Surroundings): boolean {
  const tree = formulaTree(formula);
  if (tree === undefined) return false;
  const scope: Scope = { tree, place, options: {}, variables: NO_VARIABLES, isSingle: false, isOnEach: false, isQualified: false };
  return anyPart(tree.root, (part) => isOnEach(part) && isSeveral(part, scope));
}

const JOINS: readonly string[] = [":", " ", ","];

const isOnEach = (part: Part): boolean =>
  (part?.type === "BinaryExpression" && !JOINS.includes(part.operator)) ||
  (part?.type === "UnaryExpression" && part.operator !== "#" && part.operator !== "@") ||
  (part?.type === "CallExpression" && WORKS_ON_EACH.has(nameCalled(part).toUpperCase()));

function isSeveral(part: Part, scope: Scope): boolean {
  try {
    return !isOne(sizeOf(part, scope));
  } catch (thrown) {
    if (thrown instanceof CannotWrite) return true;
    throw thrown;
  }
}
