import { readFileSync } from "node:fs";
import path from "node:path";
import lock from "../../../package-lock.json";
import { version } from "../../../package.json";
import contract from "../contract.json";
import { brokenPromises, presentMetadata, presentPromises, promisedBy, type Released } from "./promises";
import released from "./released.json";

const versions = Object.entries(released as Record<string, Released>);
const ascending = (one: string, other: string): number => one.localeCompare(other, "en", { numeric: true });

test("the versions on record ascend, and the last is that of package.json, package-lock.json and manifest.xml", () => {
  const names = versions.map(([name]) => name);
  expect(names).toEqual([...names].sort(ascending));
  expect(names.length).toBeGreaterThan(1);
  expect([names.at(-1), lock.version, lock.packages[""].version]).toEqual([version, version, version]);
  expect(readFileSync(path.join(__dirname, "../../../manifest.xml"), "utf8")).toContain(`<Version>${version}.0</Version>`);
  for (const [, { functionsJson }] of versions) expect(functionsJson).toMatch(/^[0-9a-f]{64}$/);
});

test("functions.json is the one on record for the version in package.json", () => {
  if (versions.at(-1)?.[1].functionsJson === presentMetadata()) return;
  throw new Error(
    `functions.json has changed and the version has not. Clients keep functions.json for 24 hours unless the version in manifest.xml rises. ` +
      `If ${version} has been published, raise the version in package.json, package-lock.json and manifest.xml. ` +
      `Then run: npm run record`,
  );
});

test("what any version promised to saved workbooks is promised still, and contract.json says the same (npm run record writes both)", () => {
  const promised = promisedBy(versions.map(([, one]) => one));
  expect(Object.keys(promised).length).toBeGreaterThan(30);
  expect(presentPromises).toEqual(promised);
  expect(contract).toEqual(promised);
});

test.each([
  ["the same", "a:matrix, [b]:scalar -> matrix", "a:matrix, [b]:scalar -> matrix", true],
  ["an optional input added at the end", "a:matrix -> matrix", "a:matrix, [b]:matrix -> matrix", true],
  ["two added at the end", "a:matrix -> matrix", "a:matrix, [b]:matrix, [c]:scalar -> matrix", true],
  ["an optional input where there was none", " -> scalar", "[a]:scalar -> scalar", true],
  ["a required input where there was none", " -> scalar", "a:scalar -> scalar", false],
  ["a required input added", "a:matrix -> matrix", "a:matrix, b:matrix -> matrix", false],
  ["a required input after an optional one added", "a:matrix -> matrix", "a:matrix, [b]:matrix, c:matrix -> matrix", false],
  ["an optional input put in between", "a:matrix, [b]:scalar -> matrix", "a:matrix, [c]:scalar, [b]:scalar -> matrix", false],
  ["another order", "a:matrix, b:matrix -> matrix", "b:matrix, a:matrix -> matrix", false],
  ["an input taken away", "a:matrix, [b]:scalar -> matrix", "a:matrix -> matrix", false],
  ["an optional input made required", "a:matrix, [b]:scalar -> matrix", "a:matrix, b:scalar -> matrix", false],
  ["another shape of an input", "a:scalar -> matrix", "a:matrix -> matrix", false],
  ["another shape of the answer", "a:matrix -> matrix", "a:matrix -> scalar", false],
  ["an input's name made longer", "a:matrix -> matrix", "a:matrix2 -> matrix", false],
])("a promise with %s is kept or broken", (_what, before, after, kept) => {
  expect(brokenPromises({ F: before }, { F: after })).toHaveLength(kept ? 0 : 1);
});

test("a function that is gone breaks its promise, and a version that breaks one is refused", () => {
  expect(brokenPromises({ F: "a:matrix -> matrix" }, {})).toEqual(["F: a:matrix -> matrix became nothing"]);
  const first = { functionsJson: "", promises: { F: "a:matrix -> matrix" } };
  expect(promisedBy([first, { functionsJson: "", promises: { G: "b:scalar -> scalar" } }])).toEqual({
    F: "a:matrix -> matrix",
    G: "b:scalar -> scalar",
  });
  expect(() => promisedBy([first, { functionsJson: "", promises: { F: "b:matrix -> matrix" } }])).toThrow("F: a:matrix -> matrix became b:matrix");
});
