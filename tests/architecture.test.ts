import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

const SRC = path.join(__dirname, "../src");

/** What each room may import from. Pure rooms come first; whoever stands lower knows nothing of who stands higher. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  problems: [],
  numerics: [],
  inputs: ["problems"],
  chemistry: ["problems"],
  weighing: ["problems"],
  balance: ["problems"],
  sense: ["problems"],
  confidence: ["numerics", "weighing", "problems"],
  drying: ["numerics", "weighing", "problems"],
  residue: ["weighing", "problems"],
  decomposition: ["chemistry", "confidence", "weighing", "problems"],
  liquids: ["chemistry", "energy", "weighing", "problems"],
  furnace: ["numerics", "problems"],
  energy: ["problems"],
  pottery: ["problems"],
  functions: [
    "inputs",
    "chemistry",
    "weighing",
    "balance",
    "sense",
    "confidence",
    "drying",
    "residue",
    "decomposition",
    "liquids",
    "furnace",
    "energy",
    "pottery",
    "problems",
  ],
  cells: ["functions", "inputs", "problems"],
  help: ["functions", "inputs", "drying", "problems"],
  workbook: ["problems"],
  runsheet: ["chemistry", "decomposition", "drying", "balance", "confidence", "workbook", "problems"],
  sharing: ["runsheet", "functions", "inputs", "chemistry", "workbook", "problems"],
  explanation: ["runsheet", "sharing", "cells", "functions", "inputs", "numerics", "workbook", "problems"],
  xlsx: ["explanation", "sharing", "functions", "workbook", "problems"],
  report: ["runsheet", "sharing", "chemistry", "functions", "workbook", "problems"],
  command: ["workbook/grid", "workbench", "xlsx", "report", "explanation", "runsheet", "sharing", "cells", "functions", "workbook", "problems"],
  pane: ["report", "explanation", "sharing", "runsheet", "help", "functions", "chemistry", "inputs", "workbook", "problems"],
  "workbook/excel": ["workbook", "problems"],
  "workbook/grid": ["workbook", "problems"],
  addin: ["workbook/excel", "pane", "xlsx", "sharing", "workbook", "problems"],
  workbench: ["workbook/grid", "pane", "report", "xlsx", "explanation", "runsheet", "sharing", "functions", "workbook", "problems"],
};

/** Host globals may be named only where the host is spoken to. */
const MAY_NAME_THE_HOST = ["workbook/excel", "cells/register.ts"];
// The functions' registry of the local workbook offers the same global, so it must name it.
const MAY_NAME_CUSTOM_FUNCTIONS = [...MAY_NAME_THE_HOST, "workbench"];

const sources = readdirSync(SRC, { recursive: true, encoding: "utf8" })
  .map((file) => file.replaceAll("\\", "/"))
  .filter((file) => file.endsWith(".ts"))
  .map((file) => ({ file, text: readFileSync(path.join(SRC, file), "utf8") }));

const roomOf = (file: string): string => {
  const [first = "", second = ""] = file.split("/");
  return MAY_IMPORT[`${first}/${second}`] === undefined ? first : `${first}/${second}`;
};

const importsOf = (file: string, text: string): string[] =>
  [...text.matchAll(/(?:from|import|import\()\s*"(\.[^"]+)"/g)].map(([, target = ""]) => path.posix.join(path.posix.dirname(file), target));

test("there are sources to look at", () => {
  expect(sources.length).toBeGreaterThan(50);
});

test.each(sources.map(({ file, text }) => [file, text]))("%s imports only from rooms below its own", (file, text) => {
  const room = roomOf(file);
  const allowed = MAY_IMPORT[room];
  expect({ room, known: allowed !== undefined }).toEqual({ room, known: true });
  const strays = importsOf(file, text).filter((target) => roomOf(target) !== room && !allowed?.includes(roomOf(target)));
  expect(strays).toEqual([]);
});

/** What a file needs at run time: its imports without those of types alone. */
const runtimeImportsOf = (file: string, text: string): string[] =>
  importsOf(file, text.replace(/^(?:import|export) type [^;]*;/gm, "").replace(/^(?:import|export) \{(?:\s*type [^,}]+,?)+\s*\} from [^;]*;/gm, ""));

/** A circle of files that import one another, each named once from any of them on; undefined where there is none. */
function importCircle(imports: ReadonlyMap<string, readonly string[]>): readonly string[] | undefined {
  const done = new Set<string>();
  const search = (file: string, path: readonly string[]): readonly string[] | undefined => {
    if (path.includes(file)) return path.slice(path.indexOf(file));
    if (done.has(file)) return undefined;
    for (const target of imports.get(file) ?? []) {
      const found = search(target, [...path, file]);
      if (found !== undefined) return found;
    }
    done.add(file);
    return undefined;
  };
  for (const file of imports.keys()) {
    const found = search(file, []);
    if (found !== undefined) return found;
  }
  return undefined;
}

test("no file imports itself by way of others, imports of types alone not counted", () => {
  const imports = new Map(sources.map(({ file, text }) => [file.replace(/\.ts$/, ""), runtimeImportsOf(file, text)]));
  const targets = [...imports.values()].flat();
  // Had the targets other names than the files, there would be no circle to find.
  expect(targets.length).toBeGreaterThan(imports.size);
  expect(targets.filter((target) => !/\.\w+$/.test(target) && !imports.has(target))).toEqual([]);
  expect(importCircle(imports)).toBeUndefined();
});

test("a circle of imports is found, and one of types alone is none", () => {
  const circle = (...texts: readonly string[]): readonly string[] | undefined =>
    importCircle(new Map(texts.map((text, index) => [`room/${"abc".charAt(index)}`, runtimeImportsOf(`room/${"abc".charAt(index)}.ts`, text)])));
  expect(circle('import { b } from "./b";', 'import { c, type C } from "./c";', 'export { b } from "./b";')).toEqual(["room/b", "room/c"]);
  expect(circle('import { b } from "./b";', 'import type { A } from "./a";')).toBeUndefined();
  expect(circle('import { b } from "./b";', 'import { type A, type B } from "./a";')).toBeUndefined();
});

test.each(Object.entries(MAY_IMPORT))("%s uses every permission it has", (room, allowed) => {
  const own = sources.filter(({ file }) => roomOf(file) === room);
  const used = new Set(own.flatMap(({ file, text }) => importsOf(file, text).map(roomOf)));
  expect({ files: own.length > 0, unused: allowed.filter((other) => !used.has(other)) }).toEqual({ files: true, unused: [] });
});

test.each(sources.map(({ file, text }) => [file, text]))("%s names the host only where the host is spoken to", (file, text) => {
  const codeOnly = text.replace(/\/\*[\s\S]*?\*\/|\/\/.*|"(?:[^"\\]|\\.)*"|`(?:[^`\\]|\\.)*`/g, "");
  const isIn = (places: readonly string[]): boolean => places.some((place) => file === place || file.startsWith(`${place}/`));
  if (!isIn(MAY_NAME_THE_HOST)) expect(codeOnly).not.toMatch(/\b(Office|Excel|OfficeExtension)\./);
  if (!isIn(MAY_NAME_CUSTOM_FUNCTIONS)) expect(codeOnly).not.toMatch(/\bCustomFunctions\b/);
});

test.each(["utils", "helpers", "common", "misc"])("no room or file is called %s", (name) => {
  expect(sources.filter(({ file }) => file.toLowerCase().split(/[/.]/).includes(name))).toEqual([]);
});
