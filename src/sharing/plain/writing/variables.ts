import { lambdaCalled, nameCalled, type Call, type Lambda, type Let, type Part } from "../formula/parts";
import { CannotWrite } from "./CannotWrite";
import { callsOurs, isAbsolute, namedFormula } from "./named";
import { FoundOnceBy } from "./FoundOnce";
import { within, type Bound, type Scope } from "./Scope";

/** A LAMBDA and what its own text sees. */
export interface BoundLambda {
  readonly lambda: Lambda;
  readonly scope: Scope;
}

/** What a call calls where that is a LAMBDA: written on the spot, or behind a variable or a defined name. @throws CannotWrite */
export function lambdaOf(call: Call, scope: Scope): BoundLambda | undefined {
  const lambda = lambdaCalled(call);
  return lambda === undefined ? lambdaNamed(nameCalled(call), scope) : { lambda, scope };
}

/**
 * The LAMBDA behind a variable or a defined name. Of defined ones, those without our functions may stay where functions newer than Excel 2016
 * are allowed.
 * @throws CannotWrite for one that means other cells in each cell that calls it
 */
export function lambdaNamed(name: string, scope: Scope): BoundLambda | undefined {
  const variable = scope.variables.get(name.toLowerCase());
  if (variable !== undefined) {
    const { value } = variable;
    if (value?.type === "LambdaExpression") return { lambda: value, scope: variable.scope };
    return value?.type === "ReferenceIdentifier" && value.kind === "name" ? lambdaNamed(value.value, variable.scope) : undefined;
  }
  if (name === "" || scope.place.nameOf(name, scope.place.sheet) === undefined) return undefined;
  const named = namedFormula(name, scope);
  const { root } = named.tree;
  if (root.type === "ReferenceIdentifier" && root.kind === "name") return lambdaNamed(root.value, named);
  if (root.type !== "LambdaExpression" || (scope.options.newerFunctions === true && !callsOurs(named))) return undefined;
  if (!isAbsolute(named.tree)) throw new CannotWrite("unknownName");
  return { lambda: root, scope: named };
}

/** The scope of a LAMBDA's body where it is called: each parameter stands for its argument; undefined where there are more or fewer arguments. */
export const scopeOfCalled = (call: Call, lambda: BoundLambda, scope: Scope): Scope | undefined =>
  scopesOfCalled.of(scope.place, call, scope, () => boundTo(call, lambda, scope));

const scopesOfCalled = new FoundOnceBy<Scope["place"], Scope | undefined>();

function boundTo(call: Call, { lambda, scope: outer }: BoundLambda, scope: Scope): Scope | undefined {
  if (call.arguments.length !== lambda.params.length) return undefined;
  const variables = new Map(outer.variables);
  lambda.params.forEach(({ name }, index) => variables.set(name.toLowerCase(), { value: call.arguments[index], scope, isKept: false }));
  const { isSingle, isOnEach, isQualified } = scope;
  return within(outer, { variables, isSingle, isOnEach, isQualified });
}

/** True where a variable that is written by its name could be taken for one of the same name within what stands for another variable. */
export const hasSubstituted = ({ variables }: Scope): boolean => [...variables.values()].some((one: Bound) => !one.isKept);

/** The scope of a LET's last part, each variable known to it. A LAMBDA in one is written where it is called. */
export const scopeOfLet = (part: Let, scope: Scope): Scope => scopesOfLets.of(scope.place, part, scope, () => declared(part, scope));

const scopesOfLets = new FoundOnceBy<Scope["place"], Scope>();

function declared({ declarations }: Let, scope: Scope): Scope {
  const isKept = isLetKept(scope);
  let inside = scope;
  for (const { id, init } of declarations) {
    const variables = new Map(inside.variables).set(id.name.toLowerCase(), {
      value: init,
      scope: inside,
      isKept: isKept && !isFunction(init, inside),
    });
    inside = within(inside, { variables });
  }
  return inside;
}

export const isLetKept = (scope: Scope): boolean => scope.options.newerFunctions === true && !scope.isQualified && !hasSubstituted(scope);

const isFunction = (part: Part, scope: Scope): boolean =>
  part?.type === "LambdaExpression" || (part?.type === "ReferenceIdentifier" && part.kind === "name" && lambdaNamed(part.value, scope) !== undefined);
