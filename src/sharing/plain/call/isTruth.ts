import { nameCalled, type Part } from "../formula/parts";
import { namedFormula } from "../writing/named";
import type { Scope } from "../writing/Scope";
import { scopeOfLet } from "../writing/variables";

const COMPARES = ["=", "<", ">", "<=", ">=", "<>"];
const SAYS_WHETHER = /^(?:TRUE|FALSE|AND|OR|XOR|NOT|EXACT|IS(?:BLANK|ERR|ERROR|EVEN|FORMULA|LOGICAL|NA|NONTEXT|NUMBER|ODD|REF|TEXT))$/i;

/** True where a part is a truth whatever the cells hold. LibreOffice counts one that is calculated or named as a number, which Excel does not. */
export function isTruth(part: Part, scope: Scope): boolean {
  switch (part?.type) {
    case "Literal":
      return typeof part.value === "boolean";
    case "BinaryExpression":
      return COMPARES.includes(part.operator);
    case "CallExpression":
      return SAYS_WHETHER.test(nameCalled(part));
    case "LetExpression":
      return isTruth(part.body, scopeOfLet(part, scope));
    case "UnaryExpression":
      return (part.operator === "@" || part.operator === "+") && isTruth(part.arguments[0], scope);
    case "ReferenceIdentifier": {
      if (part.kind !== "name") return false;
      const variable = scope.variables.get(part.value.toLowerCase());
      if (variable !== undefined) return isTruth(variable.value, variable.scope);
      const named = namedFormula(scope.tree.textOf(part), scope);
      return isTruth(named.tree.root, named);
    }
    default:
      return false;
  }
}
