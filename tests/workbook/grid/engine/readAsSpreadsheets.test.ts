import { signsWritten } from "../../../../src/workbook/grid/engine/readSigns";
import { saveXlsx } from "../../../../src/workbench/xlsx/saveXlsx";
import { WorkbookPackage } from "../../../../src/xlsx/package/WorkbookPackage";
import type { CellContent } from "../../../../src/workbook/Workbook";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../../workbench/headlessWorkbook";

jest.setTimeout(120_000);

let open: HeadlessWorkbook;
beforeAll(async () => {
  open = await openHeadlessWorkbook();
});
afterAll(() => open.close());

/** Each formula in a row of its own, all in one calculation; then each again in the next one. */
async function answers(formulas: readonly string[]): Promise<CellContent[][]> {
  await open.type(FIRST_SHEET, "A1", '=""');
  await open.type(FIRST_SHEET, "A3", "oak");
  for (const [index, formula] of formulas.entries()) await open.type(FIRST_SHEET, `C${index + 1}`, formula);
  await open.settled();
  const read = async (): Promise<CellContent[]> =>
    (await open.workbook.read(FIRST_SHEET, `C1:C${formulas.length}`)).rows.map(([cell]) => cell?.value ?? null);
  const first = await read();
  for (const [index, formula] of formulas.entries()) await open.type(FIRST_SHEET, `C${index + 1}`, `${formula} `);
  await open.settled();
  return [first, await read()];
}

// A1 gives an empty text, A2 is blank, A3 holds a word. LibreOffice answers the same, but for LET, which it lacks.
const EXPECTED: readonly (readonly [formula: string, answer: CellContent])[] = [
  ["=A1=0", false],
  ['=A1=""', true],
  ["=ISBLANK(A1)", false],
  ["=ISTEXT(A1)", true],
  ["=A1+1", "#VALUE!"],
  ["=COUNTA(A1:A2)", 1],
  ["=A1>1", true],
  ['=MATCH("",A2:A2,0)', "#N/A"],
  ["=SUMPRODUCT(--(A1:A2=0))", 1],
  ["=A2=0", true],
  ["=IF(TRUE,A2)", 0],
  ["=IFERROR(A2,1)", 0],
  ["=IFERROR(1/0,)", 0],
  ["=CHOOSE(2,1,)", 0],
  ["=IF(A3,1,2)", "#VALUE!"],
  ['=IF("FALSE",1,2)', 2],
  ['=IF("true",1,2)', 1],
  ['=--"3"', 3],
  ["=--TRUE", 1],
  ['=SUM(--{"1","2"})', 3],
  ["=SUMPRODUCT(--{TRUE,FALSE})", 1],
  ["=LET(x,2,-x^2)", 4],
  ['=5-"3"', 2],
];

test("empty texts, blank cells, texts as conditions and signs are read as other spreadsheets read them, in whichever calculation", async () => {
  const wanted = EXPECTED.map(([, answer]) => answer);
  expect(await answers(EXPECTED.map(([formula]) => formula))).toEqual([wanted, wanted]);
});

test.each([
  ['=--"3"', '=(0-(0-"3"))'],
  ["=1--TRUE", "=1-(0-TRUE)"],
  ['=SUM(--{"1","2"})', '=SUM((0-(0-{"1","2"})))'],
  ["=-rate^2+A1", "=(0-rate)^2+A1"],
  ['=A1 - -"3"', '=A1 - (0-"3")'],
  ['=IF(A1,-"5"%,- TRUE)', '=IF(A1,(0-"5")%,(0-TRUE))'],
  ["=-SUM(A1)", "=-SUM(A1)"],
  ['=5%-"3"', '=5%-"3"'],
  ['=SUM(A1)-"3"', '=SUM(A1)-"3"'],
  ['={1,2}-"3"', '={1,2}-"3"'],
  ["=+A4", "=A4"],
  ["=IF(TRUE,+ A4,-+A5)", "=IF(TRUE,A4,-A5)"],
  ["=SUM(A1)+C1", "=SUM(A1)+C1"],
  ["=A1++A2", "=A1+A2"],
  ["=-Sheet1!A1", "=-Sheet1!A1"],
  ['="-TRUE"', '="-TRUE"'],
])("the signs of %s are written %s", (formula, written) => expect(signsWritten(formula)).toBe(written));

test("a HYPERLINK over a number, a truth or a blank cell is that, to sums and in files, and one over a text is a text", async () => {
  const { workbook } = open;
  const formulas: [formula: string, value: CellContent][] = [
    ['=HYPERLINK("#A1",12.5)', 12.5],
    ['=HYPERLINK("#A1",G1+0)', 12.5],
    ['=HYPERLINK("#A1",1=1)', true],
    ['=HYPERLINK("#A1",G9)', 0],
    ['=HYPERLINK("#A1","12")', "12"],
    ['=HYPERLINK("#A1","tin")', "tin"],
    ['=HYPERLINK("#A1")', "#A1"],
  ];
  for (const [index, [formula]] of formulas.entries()) await open.type(FIRST_SHEET, `G${index + 1}`, formula);
  await open.type(FIRST_SHEET, "H8", "=SUM(G1:G4)");
  await open.settled();
  const values = (await workbook.read(FIRST_SHEET, "G1:G7")).rows.map(([cell]) => cell?.value);
  expect(values).toEqual(formulas.map(([, value]) => value));
  expect((await workbook.read(FIRST_SHEET, "H8")).rows[0]?.[0]?.value).toBe(25);
  const file = await WorkbookPackage.of(await saveXlsx(open.engine));
  const kinds: unknown[] = [];
  await file.readCells(FIRST_SHEET, ({ cell, value }) => void (/^G[1-5]$/.test(cell) && kinds.push(value)));
  expect(kinds).toEqual([12.5, 12.5, true, 0, "12"]);
});
