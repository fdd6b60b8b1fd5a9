import type { AstExpression } from "@borgar/fx";

/** A part of a cell formula, with all that stands in it; null for an argument left out. */
export type Part = AstExpression | null | undefined;

export type Call = Extract<AstExpression, { type: "CallExpression" }>;
export type Let = Extract<AstExpression, { type: "LetExpression" }>;
export type Lambda = Extract<AstExpression, { type: "LambdaExpression" }>;
export type Reference = Extract<AstExpression, { type: "ReferenceIdentifier" }>;

/** The name that a call calls; "" where that is no name but a LAMBDA, or what another call gives. */
export const nameCalled = ({ callee }: Call): string => (callee as { readonly name?: string }).name ?? "";

/** The LAMBDA that a call calls on the spot, which the parser's types leave out. */
export function lambdaCalled({ callee }: Call): Lambda | undefined {
  const called: { readonly type: string } = callee;
  return called.type === "LambdaExpression" ? (called as Lambda) : undefined;
}

/** The variables of a LET or LAMBDA, as written. */
export function variablesIn(part: Part): readonly string[] {
  if (part?.type === "LetExpression") return part.declarations.map(({ id }) => id.name);
  return part?.type === "LambdaExpression" ? part.params.map(({ name }) => name) : [];
}

/** What a part is calculated from, one level down: with what is called where that has no name, and the values of a LET behind its last part. */
export function partsOf(part: Part): readonly Part[] {
  switch (part?.type) {
    case "UnaryExpression":
    case "BinaryExpression":
      return part.arguments;
    case "CallExpression":
      return nameCalled(part) === "" ? [part.callee as unknown as Part, ...part.arguments] : part.arguments;
    case "LetExpression":
      return [part.body, ...part.declarations.map(({ init }) => init)];
    case "LambdaExpression":
      return [part.body];
    default:
      return [];
  }
}

/** True where some part of a formula is such a one. Loops over what stands ahead: a sum of thousands of terms is as deep as it is long. */
export function anyPart(root: Part, isSuch: (part: Part) => boolean): boolean {
  const ahead: Part[] = [root];
  while (ahead.length > 0) {
    const part = ahead.pop();
    if (isSuch(part)) return true;
    ahead.push(...partsOf(part));
  }
  return false;
}
