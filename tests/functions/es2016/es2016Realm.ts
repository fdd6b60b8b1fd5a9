import { parse } from "acorn";
import vm from "node:vm";
import { es2016BuiltIns, type BuiltIn } from "./builtIns";

/** @throws SyntaxError when this is no script of ECMAScript 2016, its regular expressions included */
export const parseAsEs2016 = (script: string) => parse(script, { ecmaVersion: 2016, sourceType: "script" });

const KEPT = es2016BuiltIns();

/**
 * A realm of the language alone (no page, no Node) with every built-in taken out that came after ECMAScript 2016, and with a
 * RegExp that refuses what that edition cannot read. `given` are the globals that a host adds.
 */
export function es2016Realm(given: Readonly<Record<string, unknown>>): { realm: vm.Context; takenOut: readonly string[] } {
  const realm = vm.createContext({});
  const globals = vm.runInContext("this", realm) as { RegExp: RegExpConstructor } & Record<string, unknown>;
  const takeOut = vm.runInContext(`(${takeOutLater.toString()})`, realm) as typeof takeOutLater;
  const takenOut = takeOut(globals, KEPT);
  const strict = vm.runInContext(`(${withStrictRegExp.toString()})`, realm) as typeof withStrictRegExp;
  strict(globals, (pattern, flags) => void parseAsEs2016(String(new RegExp(pattern, flags))));
  Object.assign(realm, given);
  return { realm, takenOut };
}

/** Runs inside the realm, as its own source: it may use nothing from around it, and nothing that it takes out. */
function takeOutLater(globals: Record<string, unknown>, kept: Readonly<Record<string, BuiltIn>>): string[] {
  const takenOut: string[] = [];
  const named = (key: string | symbol): string => (typeof key === "string" ? key : String(key).replace(/^Symbol\(Symbol\.(.*)\)$/, "@@$1"));
  const keepOnly = (holder: unknown, names: readonly string[], where: string): void => {
    if (holder === null || (typeof holder !== "object" && typeof holder !== "function")) return;
    for (const key of Reflect.ownKeys(holder)) {
      if (names.indexOf(named(key)) >= 0) continue;
      if (!Reflect.deleteProperty(holder, key)) throw new Error(`${where}.${named(key)} cannot be taken out`);
      takenOut.push(`${where}.${named(key)}`);
    }
  };
  const prototypeOf = (value: object): object => Object.getPrototypeOf(value) as object;
  const typedArray = prototypeOf(Int8Array) as typeof Int8Array;
  const int8 = kept.Int8Array as BuiltIn;
  keepOnly(prototypeOf(prototypeOf([][Symbol.iterator]())), ["@@iterator", "constructor"], "%Iterator%.prototype");
  keepOnly(typedArray, int8.own.concat("@@species"), "%TypedArray%");
  keepOnly(typedArray.prototype, int8.ofInstances.concat("@@toStringTag"), "%TypedArray%.prototype");
  // The later well-known symbols are fixed to Symbol, so another stands in for it that never had them.
  const symbol = globals.Symbol as SymbolConstructor & Record<string, unknown>;
  const standIn: unknown = Object.assign((description?: string) => symbol(description), { prototype: symbol.prototype });
  for (const key of Object.getOwnPropertyNames(symbol)) {
    if (kept.Symbol?.own.indexOf(key) === -1) takenOut.push(`Symbol.${key}`);
    else if (key !== "prototype" && key !== "length" && key !== "name") (standIn as Record<string, unknown>)[key] = symbol[key];
  }
  globals.Symbol = standIn;
  for (const name of Object.getOwnPropertyNames(globals)) {
    const { own, ofInstances } = kept[name] ?? { own: [], ofInstances: [] };
    const value = globals[name];
    if (kept[name] === undefined) {
      delete globals[name];
      takenOut.push(name);
    } else if (typeof value === "function" || typeof value === "object") {
      keepOnly((value as { prototype?: unknown } | null)?.prototype, ofInstances, `${name}.prototype`);
      keepOnly(value, own, name);
    }
  }
  return takenOut;
}

/** Runs inside the realm: a pattern that is put together while running is read as an engine of that edition would read it. */
function withStrictRegExp(globals: { RegExp: RegExpConstructor }, check: (pattern: string, flags: string) => void): void {
  const made = (target: RegExpConstructor, [pattern, flags]: readonly [string | RegExp, string?]): RegExp => {
    try {
      if (typeof pattern === "string") check(pattern, flags === undefined ? "" : flags);
    } catch (refused) {
      throw new SyntaxError(String(refused), { cause: refused });
    }
    return Reflect.construct(target, [pattern, flags]) as RegExp;
  };
  globals.RegExp = new Proxy(globals.RegExp, {
    construct: (target, given) => made(target, given as [string]),
    apply: (target, _here, given) => made(target, given as [string]),
  });
}
