import type { AstExpression } from "@borgar/fx";
import { partsOf, type Part } from "../../sharing/plain/formula/parts";

/**
 * Every part of an expression in the order written, the whole first. No recursion: a sum of thousands of terms is as deep as
 * it is long, and the stack is not.
 * @param isClosed true for a part that is not looked into
 */
export function* everyPart(
  whole: AstExpression | null | undefined,
  isClosed: (part: AstExpression) => boolean = () => false,
): Generator<AstExpression> {
  const ahead: Part[] = [whole];
  while (ahead.length > 0) {
    const part = ahead.pop();
    if (part === null || part === undefined) continue;
    yield part;
    const inside = isClosed(part) ? [] : inOrderWritten(part);
    for (let last = inside.length - 1; last >= 0; last--) ahead.push(inside[last]);
  }
}

// The body of a LET is written behind its values.
const inOrderWritten = (part: AstExpression): readonly Part[] =>
  part.type === "LetExpression" ? [...part.declarations.map(({ init }) => init), part.body] : partsOf(part);

export type Binary = Extract<AstExpression, { readonly type: "BinaryExpression" }>;

/** The first operand of an operation and what is done to it, step by step: the terms of a long sum hang on one another at its left side. */
export function fromFirstOperand(whole: Binary): { readonly first: AstExpression | undefined; readonly steps: readonly Binary[] } {
  const steps: Binary[] = [];
  let first: AstExpression | undefined = whole;
  while (first?.type === "BinaryExpression") {
    steps.push(first);
    first = first.arguments[0];
  }
  return { first, steps: steps.reverse() };
}

// A spreadsheet nests 64 functions at most (Excel specifications and limits); brackets, signs and operators come on top.
const DEEPEST = 500;

/** True where an expression is nested too deeply to be worked out. The terms of a sum stand beside one another, however many they are. */
export function isTooDeep(whole: AstExpression): boolean {
  const ahead: [part: Part, depth: number][] = [[whole, 1]];
  for (let next = ahead.pop(); next !== undefined; next = ahead.pop()) {
    const [part, depth] = next;
    if (part === null || part === undefined) continue;
    if (depth > DEEPEST) return true;
    const [first, ...others] = partsOf(part);
    if (first !== undefined) ahead.push([first, part.type === "BinaryExpression" ? depth : depth + 1]);
    for (const other of others) ahead.push([other, depth + 1]);
  }
  return false;
}
