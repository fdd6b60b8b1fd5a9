import { BLANK, CellError, type CellValue } from "../../../inputs/CellValue";
import type { Part } from "../formula/parts";
import type { Scope } from "../writing/Scope";

/** What is typed into the call itself; undefined for anything that a cell decides. */
export function settledValue(part: Part, scope: Scope): CellValue | undefined {
  if (part === null || part === undefined) return BLANK;
  if (part.type === "ErrorLiteral") return new CellError(scope.tree.textOf(part).toUpperCase());
  if (part.type === "UnaryExpression" && part.operator !== "#" && part.operator !== "@") {
    const inner = settledValue(part.arguments[0], scope);
    if (typeof inner !== "number") return undefined;
    return part.operator === "-" ? -inner : part.operator === "%" ? inner / 100 : inner;
  }
  if (part.type === "ReferenceIdentifier" && part.kind === "name") {
    const variable = scope.variables.get(part.value.toLowerCase());
    return variable === undefined || variable.given !== undefined ? undefined : settledValue(variable.value, variable.scope);
  }
  if (part.type !== "Literal") return undefined;
  const text = scope.tree.textOf(part);
  if (text.startsWith('"')) return text === '""' ? BLANK : text.slice(1, -1).replaceAll('""', '"');
  return part.value;
}
