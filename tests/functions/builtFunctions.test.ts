import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import vm from "node:vm";
import { gzipSync } from "node:zlib";
import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem } from "../../src/cells/CellProblem";
import { everyFunction } from "../../src/functions/catalogue";
import { literalArguments } from "./call";
import { es2016Realm, parseAsEs2016 } from "./es2016/es2016Realm";

const BUILT = path.join(__dirname, "../../dist/addin");
// A bound of our own, 3 % above what the file takes: every workbook that calculates loads it. By what each part adds to the rest, in kB: the
// readers of formulas with their tables and refusals 24, the definitions 7.7, the polyfills 7.4, sentences 6.7, drying 6.5, inputs 2.8, atomic
// weights 2.2, confidence 2.2, ranges of the literature 1.8, numerics 1.8, the boundary 1.8; decomposition, liquids and atomic weights with
// their limits 9.4, furnace 5.9, energy 2.5, reporting 2.2, pottery 0.6.
const MOST_GZIPPED_BYTES = 87_300;

function shippedSource(): string {
  const file = path.join(BUILT, "functions.js");
  if (!existsSync(file)) throw new Error("The add-in is not built. Run npm run build first.");
  return readFileSync(file, "utf8");
}

type Registered = (...raw: unknown[]) => unknown;
const source = shippedSource();

/** What the shipped functions.js registers with a host, and how that host would call it. */
function loadedBy(run: (host: Readonly<Record<string, unknown>>) => void): { call: (id: string, raw: readonly unknown[]) => unknown; ids: string[] } {
  const registered = new Map<string, Registered>();
  class HostError {
    constructor(
      readonly code: string,
      readonly message: string,
    ) {}
  }
  run({ CustomFunctions: { associate: (id: string, call: Registered) => registered.set(id, call), Error: HostError } });
  const call = (id: string, raw: readonly unknown[]): unknown => {
    try {
      return registered.get(id)?.(...raw, { address: "Sheet1!A1" });
    } catch (thrown) {
      return { thrown };
    }
  };
  return { call, ids: [...registered.keys()].sort() };
}

/** Plain data, so that answers of two realms compare. A problem that is the whole answer is thrown. */
const plain = (answer: unknown): unknown =>
  JSON.parse(JSON.stringify(answer, (_key, value: unknown) => (value instanceof CellProblem ? { code: value.code, message: value.message } : value)));

function wantedOf(answer: unknown): unknown {
  const only: unknown = Array.isArray(answer) && answer.length === 1 && (answer[0] as unknown[]).length === 1 ? (answer[0] as unknown[])[0] : answer;
  return plain(only instanceof CellProblem ? { thrown: only } : answer);
}

const { realm, takenOut } = es2016Realm({});
const hosts = {
  "a host of today": loadedBy((host) => void vm.runInNewContext(source, host)),
  "a host of ECMAScript 2016": loadedBy((host) => void vm.runInContext(source, Object.assign(realm, host))),
};

const calls = everyFunction.flatMap((definition) => [
  ...definition.examples.map(({ cell }) => [cell, definition, literalArguments(cell)] as const),
  [`${definition.name} of text in every place`, definition, Object.keys(definition.inputs).map(() => [["~"]])] as const,
  [`${definition.name} of nothing`, definition, []] as const,
]);

describe.each(Object.entries(hosts))("in %s, the shipped functions.js", (_host, { call, ids }) => {
  test("registers every function of the catalogue, and functions.json lists the same", () => {
    const listed = JSON.parse(readFileSync(path.join(BUILT, "functions.json"), "utf8")) as { functions: { id: string }[] };
    expect(ids).toEqual(everyFunction.map(({ name }) => name).sort());
    expect(listed.functions.map(({ id }) => id).sort()).toEqual(ids);
  });

  test.each(calls)("answers %s as the source does", (_cell, definition, raw) => {
    expect(plain(call(definition.name, raw))).toEqual(wantedOf(callCellFunction(definition, raw)));
  });
});

test("the host of ECMAScript 2016 had nothing later before functions.js ran", () => {
  const later = ["Array.prototype.flatMap", "Object.entries", "Object.fromEntries", "String.prototype.padStart", "String.prototype.replaceAll"];
  expect(takenOut).toEqual(expect.arrayContaining([...later, "Promise.allSettled", "Symbol.asyncIterator", "globalThis", "BigInt", "WeakRef"]));
  const { realm: bare } = es2016Realm({});
  expect(() => vm.runInContext("[1].at(0)", bare)).toThrow("at is not a function");
  expect(() => vm.runInContext('new RegExp("(?<name>a)")', bare)).toThrow("SyntaxError");
  expect(vm.runInContext("[1, 2].includes(2) && 2 ** 3", bare)).toBe(8);
});

test("the shipped functions.js is a script of ECMAScript 2016, its regular expressions included", () => {
  expect(() => parseAsEs2016("a?.b")).toThrow("Unexpected token");
  expect(() => parseAsEs2016("/(?<=a)b/")).toThrow("Invalid regular expression");
  expect(parseAsEs2016(source).body.length).toBeGreaterThan(0);
});

/** Every name that stands for a variable, its own or a global: neither a key nor what follows a full stop. */
function variablesIn(script: string): string[] {
  const names = new Set<string>();
  const look = (node: unknown): void => {
    if (typeof node !== "object" || node === null) return;
    const { type, name, computed, key, property } = node as Record<string, unknown>;
    if (type === "Identifier") names.add(String(name));
    for (const part of Object.values(node) as unknown[]) if (computed === true || (part !== key && part !== property)) look(part);
  };
  look(parseAsEs2016(script));
  return [...names];
}

test("the shipped functions.js names no page", () => {
  expect(variablesIn("window.a; var b = { self: c.document }; d[document]")).toEqual(["window", "b", "c", "d", "document"]);
  const named = variablesIn(source);
  expect(named).toContain("CustomFunctions");
  expect(named.filter((name) => ["window", "self", "document", "navigator"].includes(name))).toEqual([]);
});

test("the shipped functions.js stays under its bound, gzipped", () => {
  expect(gzipSync(source).length).toBeLessThan(MOST_GZIPPED_BYTES);
});
