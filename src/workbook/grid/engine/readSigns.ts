import type { Injector } from "@univerjs/core";
import { Lexer } from "@univerjs/engine-formula";
import { tokenize, tokenTypes, type Token } from "@borgar/fx";

interface Reader {
  treeBuilder(formula: string, ...others: unknown[]): unknown;
}

/** A sign before a text, a word, an array constant or a name, spaces may stand between; or a plus before anything. */
const SUSPECT = /[-+]\s*["{\p{L}_\\]|(?:^=?|[(,;<>=*/^&+-])\s*\+/u;

/**
 * Mends a defect of engine 0.25.1: it does not know a sign before a text, TRUE or FALSE, an array constant or a name, so that --"3", --{TRUE,FALSE} and
 * -rate are #NAME? or #VALUE!. Writes 0 before the sign and brackets around both. A plus before a blank cell makes an empty text of it, and does nothing
 * elsewhere: it is left out.
 */
export function readSigns(injector: Injector): void {
  const lexer = injector.get(Lexer) as unknown as Reader;
  const read = lexer.treeBuilder.bind(lexer);
  lexer.treeBuilder = (formula, ...others) => read(SUSPECT.test(formula) ? signsWritten(formula) : formula, ...others);
}

const SIGNS: readonly string[] = ["-", "+"];
const OPEN: readonly string[] = ["(", "{", ",", ";"];
const ENDS: readonly string[] = [")", "}", "%", "#"];
const SIGNED: readonly string[] = [tokenTypes.STRING, tokenTypes.BOOLEAN, tokenTypes.REF_NAMED];

/** The same formula with 0 before every sign that the engine does not know. */
export function signsWritten(formula: string): string {
  const tokens = tokenize(formula, { mergeRefs: true });
  const written: string[] = [];
  // What stood before, spaces left out.
  let before: Token | undefined;
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as Token;
    const signs = isSign(token) && isBeginning(before) ? signsFrom(tokens, at) : undefined;
    if (signs?.minus === 0) {
      at = signs.next - 1;
      continue;
    }
    const end = signs && endOfSigned(tokens, signs.next);
    if (signs === undefined || end === undefined) {
      written.push(token.value);
      if (token.type !== tokenTypes.WHITESPACE) before = token;
      continue;
    }
    const operand = tokens.slice(signs.next, end).map(({ value }) => value).join(""); // prettier-ignore
    written.push("(0-".repeat(signs.minus), operand, ")".repeat(signs.minus));
    before = tokens[end - 1];
    at = end - 1;
  }
  return written.join("");
}

const isSign = ({ type, value }: Token): boolean => type === tokenTypes.OPERATOR && SIGNS.includes(value);

/** True where what follows is a new operand: a sign there belongs to it. */
const isBeginning = (before: Token | undefined): boolean =>
  before === undefined || before.type === tokenTypes.FX_PREFIX || OPEN.includes(before.value) || (before.type === tokenTypes.OPERATOR && !ENDS.includes(before.value)); // prettier-ignore

/** The signs from a place on, with spaces between, and the place behind them. */
function signsFrom(tokens: readonly Token[], at: number): { readonly minus: number; readonly next: number } {
  let [minus, next] = [0, at];
  for (let token = tokens[next]; token !== undefined && (isSign(token) || token.type === tokenTypes.WHITESPACE); token = tokens[++next])
    if (token.value === "-") minus += 1;
  return { minus, next };
}

/** The place behind an operand whose sign the engine does not know; undefined where it knows it. */
function endOfSigned(tokens: readonly Token[], at: number): number | undefined {
  const token = tokens[at];
  if (token === undefined) return undefined;
  if (SIGNED.includes(token.type)) return at + 1;
  if (token.value !== "{") return undefined;
  const end = tokens.findIndex(({ value }, index) => index > at && value === "}");
  return end === -1 ? undefined : end + 1;
}
