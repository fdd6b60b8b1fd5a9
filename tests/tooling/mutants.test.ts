import path from "node:path";

interface Mutant {
  readonly file: string;
  readonly mutator: string;
  readonly original: string;
  readonly replacement: string;
}

const { sampleByRoom, roomOf, countsStrings } = jest.requireActual<{
  sampleByRoom: (mutants: readonly Mutant[], draw: { seed: number; size: number }) => Mutant[];
  roomOf: (file: string) => string;
  countsStrings: (file: string) => boolean;
}>("../../src/tooling/mutants/sample.js");
const { misprinted } = jest.requireActual<{ misprinted: (number: string) => string }>("../../src/tooling/mutants/numberMutator.js");

const { chosenFiles, relatedTests, stagesOf } = jest.requireActual<{
  chosenFiles: (all: readonly string[], given: { room?: readonly string[]; files?: readonly string[] }) => string[];
  relatedTests: (root: string, files: readonly string[]) => string[];
  stagesOf: (root: string, tests: readonly string[], files: readonly string[]) => string[][];
}>("../../src/tooling/mutants/chosenFiles.js");

const mutantsOf = (file: string, count: number): Mutant[] =>
  Array.from({ length: count }, (_, index) => ({ file, mutator: "NumberLiteral", original: String(index), replacement: String(index + 1) }));

const DRYING = mutantsOf("src/drying/fit.ts", 200);
const BALANCE = mutantsOf("src/balance/buoyancy.ts", 10);
const originals = (mutants: readonly Mutant[]): string[] => mutants.map(({ original }) => original);

test("each room gives the same number, or all it has", () => {
  const sample = sampleByRoom([...DRYING, ...BALANCE], { seed: 1, size: 30 });
  expect(sample.filter(({ file }) => file === "src/drying/fit.ts")).toHaveLength(30);
  expect(sample.filter(({ file }) => file === "src/balance/buoyancy.ts")).toHaveLength(10);
  expect(new Set(sample).size).toBe(40);
});

test("the same seed draws the same sample, whatever the order and the other rooms; another seed another", () => {
  const first = sampleByRoom(DRYING, { seed: 7, size: 20 });
  expect(sampleByRoom([...BALANCE, ...[...DRYING].reverse()], { seed: 7, size: 20 }).slice(-20)).toEqual(first);
  expect(originals(sampleByRoom(DRYING, { seed: 8, size: 20 }))).not.toEqual(originals(first));
});

test("a larger sample holds the smaller one, and a file moved within its room keeps its mutants", () => {
  const small = sampleByRoom(DRYING, { seed: 7, size: 20 });
  expect(sampleByRoom(DRYING, { seed: 7, size: 40 }).slice(0, 20)).toEqual(small);
  const moved = DRYING.map((mutant) => ({ ...mutant, file: "src/drying/models/fit.ts" }));
  expect(originals(sampleByRoom(moved, { seed: 7, size: 20 }))).toEqual(originals(small));
});

test.each([
  ["src/drying/fit.ts", "drying", false],
  ["src/workbook/SheetPlan.ts", "workbook", false],
  ["src/workbook/excel/rangeAt.ts", "workbook/excel", false],
  ["src/problems/quoted.ts", "problems", true],
  ["src/runsheet/words/cautions.ts", "runsheet", true],
  ["src/help/wordsOf.ts", "help", false],
])("%s is of the room %s; its string literals count: %s", (file, room, strings) => {
  expect([roomOf(file), countsStrings(file)]).toEqual([room, strings]);
});

test.each([
  ["0.0005", "0.0006"],
  ["30_000", "40000"],
  ["1.9", "1.8"],
  ["100", "200"],
  ["0", "1"],
  ["0.0", "1"],
  ["1.58123e-6", "1.58124e-6"],
  ["1e-12", "2e-12"],
  ["1.0", "2.0"],
  ["5.0530661883182155", "5.0530661883282155"],
  ["0.013043478260869565", "0.013043478260969565"],
])("%s is misprinted as %s", (number, wrong) => {
  expect(misprinted(number)).toBe(wrong);
});

const SOURCES = ["src/balance/buoyancy.ts", "src/drying/end/fit.ts", "src/drying/moisture.ts"];

test("the sources looked at are all of them, those of a room, or those that are named", () => {
  expect(chosenFiles(SOURCES, {})).toEqual(SOURCES);
  expect(chosenFiles(SOURCES, { room: ["drying"] })).toEqual(SOURCES.slice(1));
  expect(chosenFiles(SOURCES, { files: ["./src/drying/moisture.ts", "src\\balance\\buoyancy.ts"] })).toEqual([SOURCES[0], SOURCES[2]]);
});

test("a file that is no source is named, and so are the rooms where one has no source", () => {
  expect(() => chosenFiles(SOURCES, { files: ["src/drying/moisture.ts", "src/drying/mositure.ts"] })).toThrow(
    "No such source: src/drying/mositure.ts.",
  );
  expect(() => chosenFiles(SOURCES, { room: ["dryign"] })).toThrow("Rooms: balance, drying.");
});

const ROOT = path.join(__dirname, "../..");

test("the tests run are those that import a source, by way of others too, and no more", () => {
  const found = relatedTests(ROOT, ["src/tooling/../chemistry/elementOf.ts"]).map((file) => path.relative(ROOT, file).replaceAll("\\", "/"));
  expect(found).toEqual(expect.arrayContaining(["tests/chemistry/burning/endProducts.test.ts", "tests/published/published.test.ts"]));
  expect(found.filter((file) => /^tests\/(numerics|tooling)\//.test(file))).toEqual([]);
});

test("tests of the source's room come first, then those that call cell functions, and none is lost", () => {
  const tests = ["tests/help/page.test.ts", "tests/published/published.test.ts", "tests/drying/end/fit.test.ts"].map((file) => path.join(ROOT, file));
  expect(stagesOf(ROOT, tests, ["src/drying/end/fit.ts"])).toEqual([[tests[2]], [tests[1]], [tests[0]]]);
});
