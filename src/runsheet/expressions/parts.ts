import type { Cell, Expression, Range } from "./Expression";
import { placeOf } from "./formulaText";

/** What stands inside an expression. */
export function partsOf(expression: Expression): readonly Expression[] {
  if (typeof expression !== "object") return [];
  if (expression.kind === "infix") return [expression.left, expression.right];
  if (expression.kind === "call") return expression.given;
  if (expression.kind === "joined") return expression.parts;
  return expression.kind === "bracketed" ? [expression.inner] : [];
}

export const isPlace = (one: Expression | undefined): one is Cell | Range => typeof one === "object" && (one.kind === "cell" || one.kind === "range");

/** Functions that ask where a cell stands, not what it holds. */
const OF_PLACE = ["ROW", "ROWS", "COLUMN"];

export const asksForPlace = (one: Expression): boolean => typeof one === "object" && one.kind === "call" && OF_PLACE.includes(one.name);

/** Every cell and range that an expression reads, each once, in the order written. */
export function placesIn(expression: Expression): (Cell | Range)[] {
  const found = new Map<string, Cell | Range>();
  const ahead: Expression[] = [expression];
  while (ahead.length > 0) {
    const one = ahead.shift();
    if (one === undefined || asksForPlace(one)) continue;
    if (isPlace(one)) found.set(placeOf(one), one);
    else ahead.unshift(...partsOf(one));
  }
  return [...found.values()];
}
