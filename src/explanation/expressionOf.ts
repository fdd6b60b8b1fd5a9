import { parse, tokenize, type AstExpression } from "@borgar/fx";

/** The expression tree of a cell formula or of one argument's text, with offsets in it; undefined where it cannot be read. */
export function expressionOf(text: string): AstExpression | undefined {
  try {
    return parse(tokenize(text.startsWith("=") ? text : `=${text}`, { withLocation: true })) as AstExpression;
  } catch {
    return undefined;
  }
}
