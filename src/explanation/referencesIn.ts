import type { AstExpression } from "@borgar/fx";
import { parseReference } from "./parseReference";
import type { RangeReference } from "./RangeReference";

/** Every range an expression refers to, as far as the port can read it. */
export function referencesIn(expression: AstExpression | null | undefined, homeSheet: string): RangeReference[] {
  if (expression === null || expression === undefined) return [];
  if (expression.type === "ReferenceIdentifier") {
    const reference = parseReference(expression.value, homeSheet);
    return reference === undefined ? [] : [reference];
  }
  if (expression.type === "UnaryExpression" || expression.type === "BinaryExpression" || expression.type === "CallExpression") {
    const inside = expression.arguments.flatMap((argument) => referencesIn(argument, homeSheet));
    return expression.type === "UnaryExpression" && expression.operator === "#" ? inside.map((reference) => ({ ...reference, spill: true })) : inside;
  }
  return [];
}
