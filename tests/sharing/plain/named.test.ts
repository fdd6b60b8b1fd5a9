import { plainFormula } from "../../../src/sharing/plain/plainFormula";
import { plainNames } from "../../../src/sharing/plain/plainNames";
import { ReadSheets } from "../../../src/sharing/plain/reading/ReadSheets";
import type { CellContent } from "../../../src/workbook/Workbook";
import { isHonest, isSame, liveAndPlain, type LiveAndPlain } from "./liveAndPlain";

jest.setTimeout(60_000);

// A drying of three shards, invented.
const cells: Record<string, CellContent> = {
  ...{ A1: 25, B1: 35, C1: 31.5, A2: 25, B2: 36, C2: 30, A3: 25, B3: 37, C3: 33, E1: 10, E2: 9.2, E3: 8.95, E4: 8.9, E5: 8.893 },
  H1: "=WETSHARE(A1,B1,C1)",
  H2: "=WETSHARE(A2,B2,C2)+IFERROR(WETSHARE(A1,C1,B1),0)",
  H3: "=DOUBLED(A1,B1,C1)",
  H4: "=SUM(wets)",
  H5: "=SUM(twice)",
  H6: "=INDEX(shares,2,2)",
  H7: '=IF(wet>limit,"moist","ok")',
  H8: "=RETORT.AIRLEFT(changes)",
  H9: "=RETORT.MOLARMASS(lime)",
  H10: "=RETORT.CONSTANTWEIGHT(weighings)",
  H11: "=RETORT.AIRLEFT(WETSHARE(A1,B1,C1))",
  H12: "=SUM(WETSHARE(A1:A3,B1:B3,C1:C3))",
};
const names = [
  { name: "WETSHARE", formula: "=LAMBDA(a,b,c,RETORT.MOISTURE.WET(a,b,c))" },
  { name: "DOUBLED", formula: "=LAMBDA(p,q,r,2*WETSHARE(p,q,r))" },
  { name: "wets", formula: "=RETORT.MOISTURE.WET(Sheet1!$A$1:$A$3,Sheet1!$B$1:$B$3,Sheet1!$C$1:$C$3)" },
  { name: "twice", formula: "=2*wets" },
  { name: "shares", formula: "=RETORT.PROXIMATE(Sheet1!$A$1,Sheet1!$B$1,Sheet1!$C$1,28,25.2)" },
  { name: "wet", formula: "=RETORT.MOISTURE.WET(Sheet1!$A$1,Sheet1!$B$1,Sheet1!$C$1)" },
  { name: "limit", formula: "=0.3" },
  { name: "changes", formula: "=2" },
  { name: "lime", formula: '="CaCO3"' },
  { name: "weighings", formula: "=Sheet1!$E$1:$E$5" },
];

let both: LiveAndPlain;
beforeAll(async () => void (both = await liveAndPlain({ Sheet1: cells }, { names })));
afterAll(() => both.close());

test("what calls us by a defined name is written out, and nothing is fixed", async () => {
  expect(both.shared.cells.filter(({ kind }) => kind === "fixed")).toEqual([]);
  const shown = await both.shown();
  expect(shown.map(({ cell }) => cell)).toEqual(Object.keys(cells).filter((cell) => cell.startsWith("H")));
  expect(shown.filter(({ live, plain }) => !isSame(live, plain))).toEqual([]);
});

test.each<[string, CellContent]>([
  ["B1", 250],
  ["C2", 31],
  ["A3", "n/a"],
  ["E5", 8.1],
  ["B3", null],
])("after %s becomes %s every cell is as the live one", async (cell, content) => {
  await both.type("Sheet1", cell, content);
  expect((await both.shown()).filter((one) => !isHonest(one))).toEqual([]);
});

const nameOf = (name: string): string | undefined => names.find((one) => one.name.toLowerCase() === name.toLowerCase())?.formula;
const place = { sheet: "Sheet1", cell: "K5", area: "K5", nameOf, tableOf: () => undefined, spillOf: () => undefined };
const written = (formula: string, more: Record<string, string> = {}): string => {
  const found = plainFormula(formula, { ...place, nameOf: (name) => more[name] ?? nameOf(name) });
  return found.kind === "formula" ? `${found.isArray ? "over arrays: " : ""}${found.formula}` : found.kind === "none" ? found.why : found.kind;
};

test("a name for a number is written as something calculated, which spreadsheets agree about", () => {
  expect(written("=RETORT.AIRLEFT(changes)")).toMatch(/^=IF\(IF\(ISNUMBER\(\(changes\)\),\(\(changes\)<0\)\+/);
  expect(written("=RETORT.AIRLEFT(Cup)", { Cup: "=Sheet1!$A$1" })).toMatch(/^=IF\(IF\(ISNUMBER\(Cup\)>ISLOGICAL\(Cup\),/);
});

test("a name for a chemical formula is asked whether it still stands for that", () => {
  expect(written("=RETORT.MOLARMASS(lime)")).toMatch(
    /^=IF\(\(IF\(ISTEXT\(\(lime\)\),NOT\(EXACT\(\(lime\),"CaCO3"\)\),TRUE\)\),VALUE\("formula: .*"\),\(1\*40\.078\+.*\)\)$/,
  );
});

test.each([
  ["=RETORT.AIRLEFT(dry)", "=TRUE", "dry"],
  ["=RETORT.AIRLEFT(dry)", "=Sheet1!$A$1>2", "dry"],
  ["=RETORT.AIRLEFT(A1>2)", "=0", "A1>2"],
  ["=RETORT.AIRLEFT(NOT(dry))", "=1", "NOT(dry)"],
])("a truth in place of a number is a text to every spreadsheet: %s where dry is %s", (formula, dry, truth) =>
  expect(written(formula, { dry })).toContain(`ISNUMBER((IF(${truth},"TRUE","FALSE")))`),
);

test.each([
  ["=WETSHARE(A1,B1)", "=#VALUE!"],
  ["=WETSHARE(RAND(),B1,C1)", "random"],
  ["=RETORT.AIRLEFT(drawn)", "random"],
  ["=RETORT.AIRLEFT(beside)", "tooLong"],
  ["=MAX(beside)", "over arrays: =MAX((("],
  ["=near", "unknownName"],
  ["=NEARBY(A1)", "unknownName"],
  ["=round", "unknownName"],
])("%s is %s", (formula, said) => {
  const more = { drawn: "=RAND()*100", beside: "=wets", near: "=RETORT.AIRLEFT(Sheet1!A1)", NEARBY: "=LAMBDA(a,a+RETORT.AIRLEFT(Sheet1!A1))" };
  expect(written(formula, { ...more, round: "=RETORT.AIRLEFT(1)+round" }).slice(0, said.length)).toBe(said);
});

test.each([
  ["=RETORT.AIRLEFT(A:A 7:7)", "(A:A 7:7)"],
  ["=RETORT.AIRLEFT(A1:A3 A2:C2)", "(A1:A3 A2:C2)"],
  ["=@RETORT.AIRLEFT(A1:A3 A2:C3)", "(A2)"],
  ["=RETORT.AIRLEFT(A1:A3 A2:C3)", "(A1:A3 A2:C3)"],
])("%s is asked of %s, what the references have in common", (formula, cell) => expect(written(formula)).toContain(`ISNUMBER(${cell})`));

test("names that call us are written in built-in functions where that can be, a LAMBDA as one", () => {
  const { inCells, changed } = plainNames(names, new ReadSheets({ sheets: [{ sheet: "Sheet1", range: "", rows: [] }] }), {});
  expect(changed.map(({ name }) => name)).toEqual(["WETSHARE", "wets", "wet"]);
  expect(changed[0]?.formula).toMatch(/^=LAMBDA\(a,b,c,\(IF\(/);
  expect(changed.filter(({ formula }) => /RETORT/.test(formula))).toEqual([]);
  // Over arrays, and as a function, it is written out in each cell.
  expect(inCells.filter(({ formula }) => /RETORT/.test(formula)).map(({ name }) => name)).toEqual(["WETSHARE", "wets", "shares"]);
});
