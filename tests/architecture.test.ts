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
  functions: ["inputs", "chemistry", "weighing", "balance", "sense", "confidence", "drying", "residue", "problems"],
  cells: ["functions", "inputs", "problems"],
  help: ["functions", "inputs", "drying", "problems"],
  workbook: ["problems"],
  runsheet: ["drying", "balance", "confidence", "workbook", "problems"],
  sharing: ["functions", "chemistry", "workbook", "problems"],
  explanation: ["sharing", "cells", "functions", "inputs", "workbook", "problems"],
  pane: ["explanation", "sharing", "runsheet", "help", "functions", "inputs", "workbook", "problems"],
  "workbook/excel": ["workbook", "problems"],
  "workbook/grid": ["workbook", "problems"],
  addin: ["workbook/excel", "pane"],
  workbench: ["workbook/grid", "pane", "explanation", "runsheet", "sharing", "functions", "workbook", "problems"],
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
