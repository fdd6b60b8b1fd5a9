import type { AstExpression } from "@borgar/fx";
import { expressionOf } from "../../explanation/formula/expressionOf";
import { parseReference } from "../../explanation/formula/references";
import { cellArea } from "../../workbook/cellArea";

/**
 * True where an operator works on a range cell by cell, as in SUM(A1:A3*2). From a file, a spreadsheet would take the one cell of the range
 * that stands in the formula's own row or column, unless the file says that the formula is one over arrays.
 */
export const worksOnRanges = (formula: string): boolean => hasOperatorOnRange(expressionOf(formula));

/** These join references to a range. */
const JOINS: readonly string[] = [":", " ", ","];

function hasOperatorOnRange(expression: AstExpression | null | undefined): boolean {
  if (expression?.type !== "UnaryExpression" && expression?.type !== "BinaryExpression" && expression?.type !== "CallExpression") return false;
  const operands: readonly (AstExpression | null)[] = expression.arguments;
  const isOperation = expression.type === "BinaryExpression" ? !JOINS.includes(expression.operator) : expression.type === "UnaryExpression";
  return (isOperation && operands.some(isRange)) || operands.some(hasOperatorOnRange);
}

function isRange(expression: AstExpression | null): boolean {
  if (expression?.type !== "ReferenceIdentifier") return false;
  const range = parseReference(expression.value, "")?.range;
  const area = range === undefined ? undefined : cellArea(range);
  return range !== undefined && (area === undefined || area.rows * area.columns > 1);
}
