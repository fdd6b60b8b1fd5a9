import type { AstExpression } from "@borgar/fx";
import { nameCalled } from "../../sharing/plain/formula/parts";
import type { Cells } from "../formula/Cells";
import { evaluate, type Surroundings } from "../formula/evaluate";

// Branches within branches of a formula that a person wrote; more are not looked into.
const MOST_VALUES = 20;

/**
 * Everything that an expression may give, whichever way its conditions go: conditions hold what only the spreadsheet can work out. Undefined where
 * one of the ways cannot be worked out here, so that nothing can be said.
 */
export function valuesItMayGive(whole: AstExpression, around: Surroundings): readonly Cells[] | undefined {
  const found: Cells[] = [];
  const ahead: AstExpression[] = [whole];
  for (let part = ahead.pop(); part !== undefined; part = ahead.pop()) {
    const ways = waysOf(part);
    if (ways === undefined) {
      const value = evaluate(part, around);
      if (value === undefined || found.length === MOST_VALUES) return undefined;
      found.push(value);
      continue;
    }
    for (const way of ways) {
      if (way === null) return undefined;
      ahead.push(way);
    }
  }
  return found;
}

/** What may become the value of a part unchanged; undefined for one that is no choice. */
function waysOf(part: AstExpression): readonly (AstExpression | null)[] | undefined {
  if (part.type !== "CallExpression") return undefined;
  const given = part.arguments;
  switch (nameCalled(part).toUpperCase()) {
    case "IF":
      // Without a third argument it may give FALSE, which nobody shares as a result.
      return given.length === 3 ? given.slice(1) : [null];
    case "IFERROR":
    case "IFNA":
      return given;
    default:
      return undefined;
  }
}
