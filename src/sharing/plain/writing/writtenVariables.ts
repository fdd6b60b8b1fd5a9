import { RANDOM } from "../formula/functionKinds";
import type { Call, Let, Part } from "../formula/parts";
import { CannotWrite } from "./CannotWrite";
import { within, type Scope } from "./Scope";
import { ONE, sizeOf, type Size } from "./sizeOf";
import { usesAny } from "./usesAny";
import { hasSubstituted, isLetKept, lambdaNamed, scopeOfCalled, scopeOfLet, type BoundLambda } from "./variables";
import type { Write } from "./written";

export function writtenLet(part: Let, scope: Scope, write: Write): string {
  const inside = scopeOfLet(part, scope);
  const body = write(part.body, inside);
  if (!isLetKept(scope)) {
    if (part.declarations.some(({ init }) => usesAny(init, RANDOM, scope))) throw new CannotWrite("random");
    return `(${body})`;
  }
  const parts = part.declarations.flatMap(({ id, init }, index) => {
    const after = part.declarations.slice(index + 1).find((one) => one.id.name.toLowerCase() === id.name.toLowerCase());
    if (after !== undefined) throw new CannotWrite("unreadable");
    const variable = inside.variables.get(id.name.toLowerCase());
    return variable?.isKept === true ? [`${id.name},${write(init, variable.scope)}`] : [];
  });
  return parts.length === 0 ? `(${body})` : `LET(${[...parts, body].join(",")})`;
}

export function calledLambda(call: Call, lambda: BoundLambda, scope: Scope, write: Write): string {
  const inside = scopeOfCalled(call, lambda, scope);
  if (inside === undefined) return "#VALUE!";
  if (call.arguments.some((one) => usesAny(one, RANDOM, scope))) throw new CannotWrite("random");
  return `(${write(lambda.lambda.body, inside)})`;
}

/**
 * A LAMBDA that stays one, its parameters written by their names.
 * @param sizes what the parameters are handed, one value where nothing is said
 */
export function keptLambda({ lambda, scope: outer }: BoundLambda, sizes: readonly (Size | "unknown")[], here: Scope, write: Write): string {
  if (here.options.newerFunctions !== true) throw new CannotWrite("newerFunction");
  if (here.isQualified) throw new CannotWrite("argumentForm");
  const names = lambda.params.map(({ name }) => name);
  const isShadowing = names.some((name) => here.variables.has(name.toLowerCase()) || outer.variables.has(name.toLowerCase()));
  if (isShadowing && (hasSubstituted(outer) || hasSubstituted(here))) throw new CannotWrite("newerFunction");
  const variables = new Map(outer.variables);
  names.forEach((name, index) => variables.set(name.toLowerCase(), { value: undefined, scope: outer, isKept: true, given: sizes[index] ?? ONE }));
  const body = write(lambda.body, within(outer, { variables, isSingle: false, isOnEach: false, isQualified: false }));
  return `LAMBDA(${[...names, body].join(",")})`;
}

/** The LAMBDA that a function is handed as its last argument. */
export function functionHanded(part: Part, scope: Scope): BoundLambda | undefined {
  if (part?.type === "LambdaExpression") return { lambda: part, scope };
  return part?.type === "ReferenceIdentifier" && part.kind === "name" ? lambdaNamed(part.value, scope) : undefined;
}

/** What MAP and its like hand to the function at their end, one after the other. */
export function handedSizes(name: string, parts: readonly Part[], scope: Scope): readonly (Size | "unknown")[] {
  switch (name) {
    case "BYROW":
      return [{ rows: 1, columns: sizeOf(parts[0], scope).columns }];
    case "BYCOL":
      return [{ rows: sizeOf(parts[0], scope).rows, columns: 1 }];
    // What has come together so far may be an array.
    case "REDUCE":
      return ["unknown", ONE];
    default:
      return [];
  }
}
