import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import vm from "node:vm";
import { gzipSync } from "node:zlib";
import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem } from "../../src/cells/CellProblem";
import { everyFunction } from "../../src/functions/catalogue";
import { literalArguments } from "./call";

const BUILT = path.join(__dirname, "../../dist/addin");
// A bound of our own: every workbook that calculates loads this file.
const MOST_GZIPPED_BYTES = 40_000;

/** The shipped functions.js in a realm of its own, with a registry as the host gives it. */
function shipped(): { call: (id: string, raw: readonly unknown[]) => unknown; ids: string[]; source: string } {
  const file = path.join(BUILT, "functions.js");
  if (!existsSync(file)) throw new Error("The add-in is not built. Run npm run build first.");
  const source = readFileSync(file, "utf8");
  const registered = new Map<string, (...raw: unknown[]) => unknown>();
  class HostError {
    constructor(
      readonly code: string,
      readonly message: string,
    ) {}
  }
  const associate = (id: string, run: (...raw: unknown[]) => unknown): unknown => registered.set(id, run);
  vm.runInNewContext(source, { CustomFunctions: { associate, Error: HostError } });
  const call = (id: string, raw: readonly unknown[]): unknown => {
    try {
      return registered.get(id)?.(...raw, { address: "Sheet1!A1" });
    } catch (thrown) {
      return thrown;
    }
  };
  return { call, ids: [...registered.keys()], source };
}

/** Plain data, so that answers of two realms compare. */
const plain = (answer: unknown): unknown =>
  JSON.parse(JSON.stringify(answer, (_key, value: unknown) => (value instanceof CellProblem ? { code: value.code, message: value.message } : value)));

const built = shipped();

test("the shipped functions.js registers every function of the catalogue, and functions.json lists the same", () => {
  const listed = JSON.parse(readFileSync(path.join(BUILT, "functions.json"), "utf8")) as { functions: { id: string }[] };
  expect(built.ids.sort()).toEqual(everyFunction.map(({ name }) => name).sort());
  expect(listed.functions.map(({ id }) => id).sort()).toEqual(built.ids);
});

const calls = everyFunction.flatMap((definition) => [
  ...definition.examples.map(({ cell }) => [cell, definition, literalArguments(cell)] as const),
  [`${definition.name} of text in every place`, definition, Object.keys(definition.inputs).map(() => [["~"]])] as const,
  [`${definition.name} of nothing`, definition, []] as const,
]);

test.each(calls)("the shipped functions.js answers %s as the source does", (_cell, definition, raw) => {
  const wanted = callCellFunction(definition, raw);
  expect(plain(built.call(definition.name, raw))).toEqual(plain(wanted));
});

test("the shipped functions.js stays under 40 kB gzipped", () => {
  expect(gzipSync(built.source).length).toBeLessThan(MOST_GZIPPED_BYTES);
});
