import type { AstExpression } from "@borgar/fx";
import { NAMESPACE } from "../../functions/catalogue";
import { cell, joined, range, type Call, type Expression, type Infix } from "../../runsheet/expressions/Expression";
import { catalogueName } from "../../sharing/catalogueName";
import { nameCalled } from "../../sharing/plain/formula/parts";
import { cellArea } from "../../workbook/cellArea";
import { expressionOf } from "../formula/expressionOf";

const OPERATORS = ["+", "-", "*", "/", "^", "=", "<", "<=", ">", ">="];

/** A cell formula as the data that a run sheet writes its formulas from; undefined where it holds anything else. */
export function expressionOfFormula(formula: string): Expression | undefined {
  const tree = expressionOf(formula);
  return tree && read(tree);
}

function read(tree: AstExpression | null | undefined): Expression | undefined {
  if (tree === null || tree === undefined) return undefined;
  switch (tree.type) {
    case "Literal":
      return tree.value;
    case "ReferenceIdentifier":
      return reference(tree.value);
    case "UnaryExpression": {
      const [of] = tree.arguments.map(read);
      if (tree.operator !== "-" || of === undefined) return tree.operator === "@" ? of : undefined;
      return typeof of === "number" ? -of : { kind: "infix", left: 0, operator: "-", right: of };
    }
    case "BinaryExpression": {
      const [left, right] = tree.arguments.map(read);
      if (left === undefined || right === undefined) return undefined;
      if (tree.operator === "&") return joined(...partsOf(left), ...partsOf(right));
      return OPERATORS.includes(tree.operator) ? { kind: "infix", left, operator: tree.operator as Infix["operator"], right } : undefined;
    }
    case "CallExpression": {
      const called = nameCalled(tree);
      const ours = catalogueName(called);
      const name = ours === undefined ? called.toUpperCase() : `${NAMESPACE}.${ours}`;
      const given = tree.arguments.map(read);
      // What a name that is none of ours gives is left to the spreadsheet.
      if (!given.every((one) => one !== undefined)) return undefined;
      const [of] = given;
      // What counts as a number in one cell is written as its SUM.
      const isOfCell = name === "SUM" && given.length === 1 && typeof of === "object" && of.kind === "cell";
      return { kind: "call", name: isOfCell ? "N" : (name as Call["name"]), given };
    }
    default:
      return undefined;
  }
}

const partsOf = (of: Expression): readonly Expression[] => (typeof of === "object" && of.kind === "joined" ? of.parts : [of]);

function reference(text: string): Expression | undefined {
  const area = cellArea(text);
  if (area === undefined) return undefined;
  const from = cell(area.row + 1, area.column);
  return area.rows === 1 && area.columns === 1 && !text.includes(":")
    ? from
    : range(from, cell(area.row + area.rows, area.column + area.columns - 1));
}
