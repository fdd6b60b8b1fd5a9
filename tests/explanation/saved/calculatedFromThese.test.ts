import { calculatedFromThese } from "../../../src/explanation/saved/calculatedFromThese";
import { notGiven } from "../../../src/explanation/saved/notGiven";
import type { CellReading, RangeReading } from "../../../src/workbook/Workbook";
import { reading } from "../../sharing/MemoryWorkbook";

const sheetOf = (sheet: string, ...cells: CellReading[]): RangeReading => ({ sheet, range: "", rows: cells.map((cell) => [cell]) });
const DOUBT = { sheet: "Source", cell: "B1" };

/** Whether a formula on a sheet is taken for calculated from Source!B1. */
function isRead(formula: string, ...beside: CellReading[]): boolean {
  const sheets = [
    sheetOf("Tin", reading("A1", { formula, value: 1 }), ...beside),
    sheetOf("Source", reading("A1", { value: 4 }), reading("B1", { formula: "=A1*2", value: 7 }), reading("C1", { formula: "=B1+1", value: 8 })),
    sheetOf("Other", reading("B1", { value: 3 })),
  ];
  const book = { sheets: sheets.map((one) => ({ name: one.sheet, reading: one })), names: NAMES, tables: [], colouring: [] };
  return calculatedFromThese(book, { sheets: ["Tin"] }, [DOUBT]).length > 0;
}

const NAMES = [
  { name: "where", formula: '="Source"' },
  { name: "elsewhere", formula: '="Oth"&"er"' },
];

test.each([
  ["a text", '=INDIRECT("Source!B1")', true],
  ["a text for another sheet", '=INDIRECT("Other!B1")', false],
  ["a text for another cell", '=INDIRECT("Source!A1")', false],
  ["what is calculated from it", '=INDIRECT("Source!C1")', true],
  ["texts put together", '=INDIRECT("Other"&"!B"&1)', false],
  ["a name", '=INDIRECT(elsewhere&"!B1")+1', false],
  ["a name for the sheet in doubt", '=INDIRECT(where&"!B1")+1', true],
  ["a condition", '=INDIRECT(IF(1>2,"Source","Other")&"!B1")', false],
  ["a function of texts", '=INDIRECT(LEFT("Other sheet",5)&"!B1")', false],
  ["two, of which one reads it", '=INDIRECT(LEFT("Other sheet",5)&"!B1")+INDIRECT(MID("a Source",3,6)&"!B1")', true],
  ["OFFSET to another place", "=OFFSET(Other!A1,0,1)", false],
  ["a day, which nobody can tell", '=INDIRECT(TEXT(TODAY(),"yyyy")&"!B1")', true],
  ["chance", '=INDIRECT("Other!B"&RANDBETWEEN(1,2))', true],
])("INDIRECT of %s reads a cell in doubt or not", (_, formula, is) => expect(isRead(formula)).toBe(is));

test("a text that comes from a cell in doubt is in doubt itself", () => {
  expect(isRead("=INDIRECT(A2)", reading("A2", { value: "Other!B1" }))).toBe(false);
  expect(isRead("=INDIRECT(A2)", reading("A2", { formula: '="Other!B"&(Source!B1-6)', value: "Other!B1" }))).toBe(true);
});

test("names of names take time in proportion to the names", () => {
  const doubling = Array.from({ length: 20 }, (_, level) => ({ name: `n${level}`, formula: `=n${level + 1}&n${level + 1}` }));
  const names = [...doubling, { name: "n20", formula: '=""' }, { name: "round", formula: '=round&"!B1"' }];
  const tens = Array.from({ length: 8 }, (_, level) => ({
    name: `t${level}`,
    formula: `=${Array(12)
      .fill(`t${level + 1}`)
      .join("+")}`,
  }));
  const sheets = [
    sheetOf("Tin", reading("A1", { formula: '=INDIRECT(n0&"Other!B1")', value: 3 }), reading("A2", { formula: "=INDIRECT(round)", value: 3 })),
    sheetOf("More", reading("A1", { formula: "=t0*0+1", value: 2 })),
    sheetOf("Other", reading("B1", { formula: "=1+1", value: 3 })),
  ];
  const all = [...names, ...tens, { name: "t8", formula: "=1" }];
  const book = { sheets: sheets.map((one) => ({ name: one.sheet, reading: one })), names: all, tables: [], colouring: [] };
  const begun = performance.now();
  expect(calculatedFromThese(book, { sheets: ["Tin"] }, [{ sheet: "Other", cell: "B1" }])).toHaveLength(1);
  notGiven({ sheets, names: all });
  expect(performance.now() - begun).toBeLessThan(5000);
});
