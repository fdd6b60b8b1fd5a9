import { nameCalled, type Part } from "../formula/parts";
import { CannotWrite } from "./CannotWrite";
import { FoundOnceBy } from "./FoundOnce";
import { TIED_TO_ITS_CELL } from "../formula/functionKinds";
import { cellsReferred, sheetText } from "../formula/reference";
import type { Scope } from "./Scope";
import { namedFormula } from "./named";

const isElsewhere = (name: string): boolean => name !== "" && !TIED_TO_ITS_CELL.has(name);

const ABSOLUTE = /!(?:\$[A-Z]+\$\d+(?::\$[A-Z]+\$\d+)?|\$[A-Z]+:\$[A-Z]+|\$\d+:\$\d+)$/i;

/**
 * A defined name for a cell of another sheet: a name that belongs to a sheet is told with it, and one that means other cells in each cell that
 * uses it has no place there.
 * @throws CannotWrite
 */
export function nameElsewhere(text: string, named: Scope, scope: Scope): string {
  if (!isTheSameEverywhere(named.tree.root, named)) throw new CannotWrite("argumentForm");
  const { place } = scope;
  if (text.includes("!") || place.nameOf(text, place.sheet) === place.nameOf(text, "")) return text;
  const { root } = named.tree;
  return root.type === "ReferenceIdentifier" && root.kind !== "name" ? named.tree.textOf(root) : `${sheetText(place.sheet)}!${text}`;
}

const same = new FoundOnceBy<Scope["place"], boolean>();

function isTheSameEverywhere(part: Part, scope: Scope): boolean {
  switch (part?.type) {
    case undefined:
    case "Literal":
    case "ErrorLiteral":
    case "ArrayExpression":
      return true;
    case "ReferenceIdentifier": {
      const text = scope.tree.textOf(part);
      if (part.kind === "table") return !/^\[|@|#This Row/i.test(text);
      if (part.kind !== "name") return ABSOLUTE.test(text) && cellsReferred(text, "") !== undefined;
      const named = namedFormula(text, scope);
      return same.of(scope.place, part, scope, () => isTheSameEverywhere(named.tree.root, named));
    }
    case "UnaryExpression":
      return part.operator !== "@" && isTheSameEverywhere(part.arguments[0], scope);
    case "BinaryExpression":
      return part.arguments.every((one) => isTheSameEverywhere(one, scope));
    case "CallExpression":
      // A LAMBDA called on the spot has no name, and its own text is not looked into.
      return isElsewhere(nameCalled(part).toUpperCase()) && part.arguments.every((one) => isTheSameEverywhere(one, scope));
    default:
      return false;
  }
}
