import type { AstExpression } from "@borgar/fx";
import { withSpills } from "../../sharing/plain/formula/spills";
import { anyPart, nameCalled, variablesIn, type Part } from "../../sharing/plain/formula/parts";
import { expressionOf } from "../formula/expressionOf";

/**
 * The expression tree of a cell formula or of what a name stands for, of more of them than the parser reads by itself: with names that begin with a
 * backslash, and with spills behind a sign or @. Undefined for what is still not read.
 */
export function savedExpression(formula: string): AstExpression | undefined {
  const text = formula.startsWith("=") ? formula : `=${formula}`;
  const read = expressionOf(text) ?? withBackslashes(text);
  if (read !== undefined || !text.includes("#")) return read;
  const anchored = withSpills(text, (anchor) => `ANCHORARRAY(${anchor})`);
  return anchored === text ? undefined : (expressionOf(anchored) ?? withBackslashes(anchored));
}

const TEXT_SHEET_OR_BACKSLASH = /"(?:[^"]|"")*"|'(?:[^']|'')*'|\\/g;

/** Read with an underline in place of each backslash, which begins names too, and with the names put back by their places. */
function withBackslashes(text: string): AstExpression | undefined {
  if (!text.includes("\\")) return undefined;
  const masked = text.replace(TEXT_SHEET_OR_BACKSLASH, (found) => (found === "\\" ? "_" : found));
  const read = expressionOf(masked);
  // Variables with a backslash are hardly ever met, and are better not read than taken for others.
  if (read === undefined || anyPart(read, (part) => variablesIn(part).some((name) => !text.includes(name)))) return undefined;
  anyPart(read, (part) => {
    putBack(part, text);
    return false;
  });
  return read;
}

function putBack(part: Part, text: string): void {
  const written = (loc: readonly number[] | undefined): string | undefined => {
    const found = loc === undefined ? "" : text.slice(loc[0], loc[1]);
    return found.includes("\\") ? found : undefined;
  };
  if (part?.type === "ReferenceIdentifier") part.value = written(part.loc) ?? part.value;
  if (part?.type === "CallExpression" && nameCalled(part) !== "") part.callee.name = written(part.callee.loc) ?? part.callee.name;
}
