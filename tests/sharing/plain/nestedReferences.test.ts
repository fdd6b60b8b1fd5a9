import { fixedUnfollowed } from "../../../src/problems/sharing/plainCellProblems";
import { plainFormula } from "../../../src/sharing/plain/plainFormula";
import type { TablePlace } from "../../../src/sharing/plain/reading/Surroundings";
import type { CellContent } from "../../../src/workbook/Workbook";
import { refersToItsOwnSheet, WorkingsSheet } from "../../../src/sharing/plain/WorkingsSheet";
import { DATE, FIXED, isSame, liveAndPlain, type LiveAndPlain, type ShownTwice } from "./liveAndPlain";

jest.setTimeout(60_000);

const masses: Record<string, CellContent> = { C1: 40.2, C2: 26.21, C3: 7.53, C4: 0.4, D1: 1 };
const call = (...masses: readonly string[]): string => `=INDEX(RETORT.PROXIMATE("tared",${masses.join(",")}),2,2)`;
const spelt: Record<string, CellContent> = {
  A1: call("C1", "C2", "C3", "C4"),
  A2: call("$C$1", "C$2", "$C3", "c4"),
  A3: call("Moist", "C2", "C3", "C4"),
  A4: call("Own", "C2", "C3", "C4"),
  A5: call("Lower", "C2", "C3", "C4"),
  A6: call("MAX(C:C)", "C2", "C3", "C4"),
  A7: call("MAX(C1:C4)+SUM(1:1)-SUM(1:1)", "INDEX(C1:C4,2)", "C3", "C4"),
  A9: call("'It''s (b)'!C1", "C2", "C3", "C4"),
  A10: call("C1+0*'It''s (b)'!C2", "C2", "C3", "C4"),
  A11: '=LET(m,C1,INDEX(RETORT.PROXIMATE("tared",m,C2,C3,C4),2,2))',
  A12: `=ROUND(INDEX(RETORT.PROXIMATE("tared",C1,C2,C3,C4),2,2),3)&IF(INDEX(RETORT.PROXIMATE("tared",C1,C2,C3,C4),2,2)>0.3,"wet","dry enough")`,
  A13: call("C1+ROW()-13", "C2", "C3", "C4"),
  A14: call("OFFSET(C1,0,0)", "C2", "C3", "C4"),
  A15: call("SUM(C1:INDEX(C1:C4,1))", "C2", "C3", "C4"),
};
const typed = { Sheet1: { A1: "x" }, F: spelt, "It's (b)": { C1: 40.2, C2: 1, A1: '=INDEX(RETORT.PROXIMATE("tared",F!C1,F!C2,F!C3,F!C4),2,2)' } };
const names = [
  { name: "Moist", formula: "=F!$C$1" },
  { name: "Own", sheet: "F", formula: "=F!$C$1" },
  { name: "Lower", formula: "=F!C1" },
];

const isFixed = ({ plain }: ShownTwice): boolean => plain === FIXED || plain === fixedUnfollowed(DATE);

let both: LiveAndPlain;
beforeAll(async () => {
  both = await liveAndPlain({ ...typed, F: { ...masses, ...spelt } }, { names });
});
afterAll(() => both.close());

test("however references are spelt, a table within INDEX is calculated from the same cells", async () => {
  const shown = await both.shown();
  expect(shown.filter((one) => !isSame(one.live, one.plain) && !isFixed(one))).toEqual([]);
  expect(both.shared.workings?.cells.filter(({ content }) => content.startsWith("=") && refersToItsOwnSheet(content))).toEqual([]);
});

test.each([
  ["F", "C1", 50.1],
  ["F", "C2", 27],
])("and follows them: %s!%s", async (sheet, cell, content) => {
  await both.type(sheet, cell, content);
  expect((await both.shown()).filter((one) => !isSame(one.live, one.plain) && !isFixed(one))).toEqual([]);
});

const runs: TablePlace = {
  ...{ name: "Runs", sheet: "F", area: { row: 0, column: 2, rows: 4, columns: 2 } },
  ...{ headingRows: 1, totalsRows: 0, columns: ["Mass", "Vessel"] },
};
const place = {
  ...{ sheet: "F", cell: "E2", area: "E2", nameOf: () => undefined },
  tableOf: (name: string) => (name === "" || name === "Runs" ? runs : undefined),
  spillOf: () => "H1:H4",
};

test.each([
  ["[@Mass]", "F!C2"],
  ["Runs[@Mass]", "F!C2"],
  ["Runs[[#This Row],[Mass]]", "F!C2"],
  ["MAX(Runs[Mass])", "MAX(Runs[Mass])"],
  ["MAX([Mass])", "MAX(Runs[Mass])"],
  ["MAX(H1#)", "MAX(F!H1:H4)"],
  ["MAX(ANCHORARRAY(H1))", "MAX(F!H1:H4)"],
  ["@C:C", "F!C2"],
  ["MAX(C:D)", "MAX(F!C:D)"],
  ["MAX(2:3)", "MAX(F!2:3)"],
  ["MAX(C1:C2 C2:C3)", "MAX(F!C1:C2 F!C2:C3)"],
])("%s is written as %s on the sheet of workings", (argument, there) => {
  const workings = new WorkingsSheet("Workings");
  expect(plainFormula(`=INDEX(RETORT.PROXIMATE("tared",${argument},C2,C3,C4),2,2)`, place, {}, workings).kind).toBe("formula");
  expect(workings.cells.some(({ content }) => content.startsWith("=") && content.includes(there))).toBe(true);
});

test.each(["ROW()", 'CELL("row")', "SHEET()"])("what %s means hangs on the cell, so that a table with it is fixed", (argument) => {
  const plain = plainFormula(`=INDEX(RETORT.PROXIMATE("tared",C1+${argument},C2,C3,C4),2,2)`, place, {}, new WorkingsSheet("Workings"));
  expect(plain).toEqual({ kind: "none", why: "argumentForm" });
});
