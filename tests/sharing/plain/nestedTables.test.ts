import { CellProblem } from "../../../src/cells/CellProblem";
import { everyFunction } from "../../../src/functions/catalogue";
import { refersToItsOwnSheet } from "../../../src/sharing/plain/WorkingsSheet";
import type { CellContent } from "../../../src/workbook/Workbook";
import { nestedTables, nestingFunctions, type NestedTable } from "../../spreadsheets/nestedTables";
import { FIXED, isSame, liveAndPlain, type LiveAndPlain } from "./liveAndPlain";

jest.setTimeout(120_000);

const SHEET = "A run (1)";
const tables = nestedTables(1);
const sheetOf = (all: readonly NestedTable[]): Record<string, CellContent> =>
  Object.assign({}, ...all.map(({ inputs, formulas }) => ({ ...inputs, ...formulas })));

let both: LiveAndPlain;
beforeAll(async () => {
  both = await liveAndPlain({ [SHEET]: sheetOf(tables) });
});
afterAll(() => both.close());

const texts = (): readonly string[] => both.shared.workings?.cells.map(({ content }) => content).filter((content) => content.startsWith("=")) ?? [];

test("every function that gives a table and has a plain form is tried", () => {
  expect(nestingFunctions.length).toBeGreaterThan(5);
  expect(new Set(tables.map(({ name }) => name))).toEqual(new Set(nestingFunctions));
  expect(tables.some(({ wanted }) => Object.values(wanted).some((one) => one instanceof CellProblem))).toBe(false);
  expect(everyFunction.filter(({ gives }) => gives === "table").length).toBeGreaterThanOrEqual(nestingFunctions.length);
});

test("a table within INDEX gives in plain cells what it gives with the functions", async () => {
  const shown = (await both.shown()).filter(({ plain }) => plain !== FIXED);
  expect(shown.length).toBeGreaterThan(1.5 * nestingFunctions.length);
  expect(shown.filter(({ live, plain }) => !isSame(live, plain))).toEqual([]);
  expect(both.shared.cells.filter(({ kind }) => kind === "fixed")).toEqual([]);
});

test("no formula on the sheet of workings refers to cells without naming their sheet", () => {
  expect(texts().length).toBeGreaterThan(50);
  expect(texts().filter((text) => refersToItsOwnSheet(text))).toEqual([]);
});

test.each([
  ["B1+F!B1", true],
  ["SUM($F$21:$F$24)", true],
  ["F!A1+B:B", true],
  ["'A run (1)'!B1:B4", false],
  ["F!$B:$C+Workings!$B$2:Workings!$B$4", false],
  ['IF(F!B1="B1",LOG10(2),1E5)', false],
  ["SUM(Runs[B1])+Vessel+TRUE", false],
])("whether %s refers to cells of the sheet that it stands on: %s", (text, isSo) => {
  expect(refersToItsOwnSheet(text)).toBe(isSo);
});
