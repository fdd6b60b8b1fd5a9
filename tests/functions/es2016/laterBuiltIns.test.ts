import fc from "fast-check";
import { readFileSync } from "node:fs";
import path from "node:path";
import vm from "node:vm";
import ts from "typescript";
import { es2016Realm } from "./es2016Realm";

type Build = (name: string, folder: string, secondFolder: string, mode: string) => { entry: { functions: readonly string[] } };
const functionsBuild = jest.requireActual<Build>("../../../src/tooling/functionsBuild");

const LATER_BUILT_INS = path.join(__dirname, "../../../src/cells/laterBuiltIns.ts");
const ENTRY = path.join(__dirname, "../../../src/cells/register.ts");
const DECLARED = "polyfilled.d.ts";

/** What laterBuiltIns adds to ECMAScript 2016, as the compiler has to know it: written out, so that nothing else is let in. */
const ADDED: Readonly<Record<string, string>> = {
  "Array.prototype.at": `
    interface Array<T> { at(index: number): T | undefined }
    interface ReadonlyArray<T> { at(index: number): T | undefined }`,
  "Array.prototype.flatMap": `
    interface Array<T> { flatMap<U>(made: (value: T, index: number, array: T[]) => U | readonly U[]): U[] }
    interface ReadonlyArray<T> { flatMap<U>(made: (value: T, index: number, array: T[]) => U | readonly U[]): U[] }`,
  "Object.entries": "interface ObjectConstructor { entries<T>(of: { readonly [name: string]: T } | ArrayLike<T>): [string, T][] }",
  "Object.fromEntries": "interface ObjectConstructor { fromEntries<T>(entries: Iterable<readonly [PropertyKey, T]>): { [name: string]: T } }",
  "String.prototype.trimEnd": "interface String { trimEnd(): string }",
  "String.prototype.trimStart": "interface String { trimStart(): string }",
};

/** What the compiler says of everything functions.js is made from, if the language ended in 2016 but for these declarations. */
function complaints(declarations: readonly string[]): string[] {
  const options: ts.CompilerOptions = {
    target: ts.ScriptTarget.ES2016,
    lib: ["lib.es2016.d.ts"],
    types: ["custom-functions-runtime"],
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    strict: true,
    noUncheckedIndexedAccess: true,
    exactOptionalPropertyTypes: true,
    skipLibCheck: true,
    noEmit: true,
  };
  const host = ts.createCompilerHost(options);
  const { getSourceFile } = host;
  host.getSourceFile = (name, ...rest) =>
    name === DECLARED ? ts.createSourceFile(name, declarations.join("\n"), rest[0]) : getSourceFile(name, ...rest);
  return ts.getPreEmitDiagnostics(ts.createProgram([ENTRY, DECLARED], options, host)).map(({ file, start, messageText }) => {
    const line = file === undefined ? 0 : file.getLineAndCharacterOfPosition(start ?? 0).line + 1;
    return `${file?.fileName ?? ""}:${line} ${ts.flattenDiagnosticMessageText(messageText, " ")}`;
  });
}

jest.setTimeout(60_000);

const script = ts.transpileModule(readFileSync(LATER_BUILT_INS, "utf8"), { compilerOptions: { target: ts.ScriptTarget.ES2016 } }).outputText;

/** A realm of ECMAScript 2016 in which laterBuiltIns has run. */
function mendedRealm(): vm.Context {
  const { realm } = es2016Realm({});
  vm.runInContext(script, realm);
  return realm;
}

test("what the catalogue calls of editions after 2016 is what laterBuiltIns brings into functions.js first, on every path", () => {
  const { entry } = functionsBuild("functions", "", "", "production");
  expect(entry.functions).toEqual([LATER_BUILT_INS, ENTRY]);
  const holders = ["Array.prototype", "Object", "String.prototype"];
  const namesIn = (realm: vm.Context): string[] =>
    holders.flatMap((holder) => (vm.runInContext(`Reflect.ownKeys(${holder})`, realm) as PropertyKey[]).map((key) => `${holder}.${String(key)}`));
  const before = namesIn(es2016Realm({}).realm);
  expect(namesIn(mendedRealm()).filter((name) => !before.includes(name)).sort()).toEqual(Object.keys(ADDED).sort()); // prettier-ignore
  expect(complaints(Object.values(ADDED))).toEqual([]);
});

test("where an engine has them, its own stay", () => {
  const realm = vm.createContext({});
  const own =
    "[Array.prototype.at, Array.prototype.flatMap, Object.entries, Object.fromEntries, String.prototype.trimStart, String.prototype.trimEnd]";
  vm.runInContext(`var before = ${own}`, realm);
  vm.runInContext(script, realm);
  expect(vm.runInContext(`${own}.every((one, index) => one === before[index])`, realm)).toBe(true);
});

describe("each answers as this engine's own", () => {
  const realm = mendedRealm();
  const there = (expression: string, given: unknown): unknown => {
    const answer = vm.runInContext(`(function (given) { return JSON.stringify(${expression}); })(JSON.parse(${JSON.stringify(JSON.stringify(given))}))`, realm); // prettier-ignore
    return answer === undefined ? undefined : JSON.parse(answer as string);
  };
  const list = fc.array(fc.oneof(fc.integer(), fc.string(), fc.array(fc.integer(), { maxLength: 3 }), fc.array(fc.array(fc.integer()))), {
    maxLength: 6,
  });

  test("at", () => {
    fc.assert(fc.property(list, fc.integer({ min: -8, max: 8 }), (all, index) => expect(there(`given.at(${index})`, all)).toEqual(all.at(index))));
  });

  test("flatMap", () => {
    fc.assert(
      fc.property(list, (all) => {
        expect(there("given.flatMap((one) => one)", all)).toEqual(all.flatMap((one) => one as unknown));
        expect(there("given.flatMap((one, index, all) => [index, all.length])", all)).toEqual(
          all.flatMap((_, index, every) => [index, every.length]),
        );
      }),
    );
  });

  test("entries and fromEntries, of names that are numbers or __proto__ too", () => {
    const name = fc.oneof(fc.string(), fc.constantFrom("__proto__", "1", "0", "length"));
    fc.assert(
      fc.property(fc.array(fc.tuple(name, fc.integer())), (pairs) => {
        const record = Object.fromEntries(pairs);
        expect(there("Object.entries(Object.fromEntries(given))", pairs)).toEqual(Object.entries(record));
        expect(there("Object.fromEntries(new Map(given))", pairs)).toEqual(record);
      }),
    );
  });

  test("trimStart and trimEnd, of every space there is", () => {
    const character = fc.constantFrom(..." \t\n\r\u00a0\u1680\u2003\u2028\u2029\u202f\u3000\ufeff\u200bxyzé😀");
    fc.assert(
      fc.property(fc.string({ unit: character }), (text) => {
        expect(there("given.trimStart()", text)).toBe(text.trimStart());
        expect(there("given.trimEnd()", text)).toBe(text.trimEnd());
      }),
    );
  });
});

test("without them each of these calls would fail, so none is there for nothing", () => {
  const said = complaints([]).join("\n");
  for (const name of ["at", "flatMap", "entries", "fromEntries", "trimEnd", "trimStart"]) expect(said).toContain(`Property '${name}' does not exist`);
});
