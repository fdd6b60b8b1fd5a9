import { nameCalled, partsOf, type Part } from "../formula/parts";
import { CannotWrite } from "./CannotWrite";
import { FoundOnceBy, mayGrow } from "./FoundOnce";
import { namedFormula } from "./named";
import type { Scope } from "./Scope";

/** True where an expression calls one of these functions, also through a variable or a name. */
export function usesAny(part: Part, functions: ReadonlySet<string>, scope: Scope): boolean {
  if (!mayGrow(part)) return usesAnyIn(part, functions, scope);
  const known = used.get(functions) ?? new FoundOnceBy();
  used.set(functions, known);
  return known.of(scope.place, part, scope, () => usesAnyIn(part, functions, scope));
}

const used = new Map<ReadonlySet<string>, FoundOnceBy<Scope["place"], boolean>>();

const usesAnyIn = (part: Part, functions: ReadonlySet<string>, scope: Scope): boolean =>
  (part?.type === "CallExpression" && nameCalled(part) !== "" && isOrUsesAny(nameCalled(part), functions, scope)) ||
  (part?.type === "ReferenceIdentifier" && part.kind === "name" && nameUsesAny(part.value, functions, scope)) ||
  partsOf(part).some((one) => usesAny(one, functions, scope));

const isOrUsesAny = (called: string, functions: ReadonlySet<string>, scope: Scope): boolean =>
  functions.has(called.toUpperCase()) || nameUsesAny(called, functions, scope);

/** What is written by the name of a variable is calculated once. */
function nameUsesAny(name: string, functions: ReadonlySet<string>, scope: Scope): boolean {
  const variable = scope.variables.get(name.toLowerCase());
  if (variable !== undefined) return (!variable.isKept || scope.isQualified) && usesAny(variable.value, functions, variable.scope);
  if (scope.place.nameOf(name, scope.place.sheet) === undefined) return false;
  try {
    const named = namedFormula(name, scope);
    return usesAny(named.tree.root, functions, named);
  } catch (thrown) {
    if (thrown instanceof CannotWrite) return false;
    throw thrown;
  }
}
