import type { AstExpression } from "@borgar/fx";
import type { Part } from "../formula/parts";
import type { Scope } from "./Scope";

/**
 * What was found out about parts of a formula, each once for all that ask again: a call asks its arguments several times, and those theirs, so that
 * without this the work would grow with each level of calls within calls as a power.
 */
export class FoundOnce<T> {
  private readonly found = new WeakMap<NonNullable<Part>, { readonly scope: Scope; readonly value: T }[]>();

  of(part: NonNullable<Part>, scope: Scope, find: () => T): T {
    const known = this.found.get(part)?.find((one) => isSame(one.scope, scope));
    if (known !== undefined) return known.value;
    const value = find();
    const all = this.found.get(part);
    if (all === undefined) this.found.set(part, [{ scope, value }]);
    else all.push({ scope, value });
    return value;
  }
}

/** The same for one key, such as the place of one formula, and forgotten with it: trees of names stay for all formulas. */
export class FoundOnceBy<Key extends object, T> {
  private readonly byKey = new WeakMap<Key, FoundOnce<T>>();

  of(key: Key, part: NonNullable<Part>, scope: Scope, find: () => T): T {
    const known = this.byKey.get(key) ?? new FoundOnce<T>();
    this.byKey.set(key, known);
    return known.of(part, scope, find);
  }
}

/** True for what may be asked for again and again. */
export const mayGrow = (part: Part): part is AstExpression =>
  part?.type === "CallExpression" || part?.type === "LetExpression" || (part?.type === "ReferenceIdentifier" && part.kind === "name");

const isSame = (one: Scope, other: Scope): boolean =>
  one.variables === other.variables &&
  one.isSingle === other.isSingle &&
  one.isOnEach === other.isOnEach &&
  one.isQualified === other.isQualified &&
  one.tree === other.tree &&
  one.place === other.place &&
  one.options === other.options &&
  one.depth === other.depth;
