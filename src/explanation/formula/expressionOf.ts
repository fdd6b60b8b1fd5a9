import { parse, tokenize, type AstExpression } from "@borgar/fx";
import { nameCalled } from "../../sharing/plain/formula/parts";

/** The expression tree of a cell formula or of one argument's text, with offsets in it; undefined where it cannot be read. */
export function expressionOf(text: string): AstExpression | undefined {
  try {
    return parse(tokenize(text.startsWith("=") ? text : `=${text}`, { withLocation: true }));
  } catch {
    return undefined;
  }
}

/** Which arguments of a spreadsheet's own function become its value unchanged. */
const PASSED_ON: Readonly<Record<string, readonly number[]>> = { IF: [1, 2], IFERROR: [0], IFNA: [0] };

/**
 * True where the value of a whole cell formula can be the value of the part from `start` to `end`, unchanged: the part is
 * the whole, or stands in a branch of IF or as the first argument of IFERROR or IFNA.
 */
export function givesTheValue(whole: AstExpression | undefined, start: number, end: number): boolean {
  const ahead: (AstExpression | null | undefined)[] = [whole];
  while (ahead.length > 0) {
    const part = ahead.pop();
    if (part?.loc?.[0] === start && part.loc[1] === end) return true;
    if (part?.type === "UnaryExpression" && part.operator === "@") ahead.push(part.arguments[0]);
    if (part?.type === "CallExpression") for (const branch of PASSED_ON[nameCalled(part).toUpperCase()] ?? []) ahead.push(part.arguments[branch]);
  }
  return false;
}
