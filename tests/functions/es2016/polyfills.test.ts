import path from "node:path";
import ts from "typescript";

type Build = (name: string, folder: string, secondFolder: string, mode: string) => { entry: { functions: readonly string[] } };
const functionsBuild = jest.requireActual<Build>("../../../src/tooling/functionsBuild");

const ENTRY = path.join(__dirname, "../../../src/cells/register.ts");
const DECLARED = "polyfilled.d.ts";

/** What each module of core-js adds to ECMAScript 2016, as the compiler has to know it: written out, so that nothing else is let in. */
const ADDED: Readonly<Record<string, string>> = {
  "es.array.at": `
    interface Array<T> { at(index: number): T | undefined }
    interface ReadonlyArray<T> { at(index: number): T | undefined }`,
  "es.array.flat-map": `
    interface Array<T> { flatMap<U>(made: (value: T, index: number, array: T[]) => U | readonly U[]): U[] }
    interface ReadonlyArray<T> { flatMap<U>(made: (value: T, index: number, array: T[]) => U | readonly U[]): U[] }`,
  "es.object.entries": "interface ObjectConstructor { entries<T>(of: { readonly [name: string]: T } | ArrayLike<T>): [string, T][] }",
  "es.object.from-entries": "interface ObjectConstructor { fromEntries<T>(entries: Iterable<readonly [PropertyKey, T]>): { [name: string]: T } }",
  "es.string.trim-end": "interface String { trimEnd(): string }",
  "es.string.trim-start": "interface String { trimStart(): string }",
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

test("what the catalogue calls of editions after 2016 is what core-js modules bring into functions.js, on every path", () => {
  const { entry } = functionsBuild("functions", "", "", "production");
  const modules = entry.functions.slice(0, -1).map((name) => name.replace("core-js/modules/", ""));
  expect(modules.sort()).toEqual(Object.keys(ADDED).sort());
  expect(complaints(Object.values(ADDED))).toEqual([]);
});

test("without the modules each of these calls would fail, so none is there for nothing", () => {
  const said = complaints([]).join("\n");
  for (const name of ["at", "flatMap", "entries", "fromEntries", "trimEnd", "trimStart"]) expect(said).toContain(`Property '${name}' does not exist`);
});
