import { numberAsText } from "../../../../src/workbook/grid/engine/mendFunctions";
import type { CellContent } from "../../../../src/workbook/Workbook";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../../workbench/headlessWorkbook";

jest.setTimeout(120_000);

let open: HeadlessWorkbook;
beforeAll(async () => {
  open = await openHeadlessWorkbook();
  const column = async (letter: string, values: readonly CellContent[]): Promise<void> => {
    for (const [index, value] of values.entries()) if (value !== null) await open.type(FIRST_SHEET, `${letter}${index + 1}`, value);
  };
  await column("A", [24, 36, 31.5, null, '=""', "oak"]);
  await column("B", ["tin", "pan", "tin"]);
  await column("C", [1, 2, 3]);
});
afterAll(() => open.close());

async function answers(formulas: readonly string[]): Promise<CellContent[]> {
  for (const [index, formula] of formulas.entries()) await open.type(FIRST_SHEET, `H${index * 4 + 1}`, formula);
  await open.settled();
  const { rows } = await open.workbook.read(FIRST_SHEET, `H1:H${formulas.length * 4}`);
  return formulas.map((_, index) => rows[index * 4]?.[0]?.value ?? null);
}

// LibreOffice and Gnumeric answer the same, but for MINIFS without a match, which Gnumeric calls #DIV/0!.
const EXPECTED: readonly (readonly [formula: string, answer: CellContent])[] = [
  ["=A1>-1E-3", true],
  ["=-1.5e+2<A1", true],
  ["=-1E-3&A4", "-0.001"],
  ["=LEN(-1E-3)", 6],
  ["=+A4", 0],
  ["=SUM(1,+A1)", 25],
  ["=SUMPRODUCT(N(A1:A3>25))", 2],
  ["=SUMPRODUCT(N(A1:A6))", 91.5],
  ["=N(A6)", 0],
  ["=LEN(1/3)", 17],
  ['=(1/3)&""', "0.333333333333333"],
  ['=LEN(A1&"")', 2],
  ["=SUMPRODUCT(LEN(A1:A3))", 8],
  ["=LEFT(1/3,20)", "0.333333333333333"],
  ['=SUBSTITUTE(2/3,"0.","")', "666666666666667"],
  ['=CONCATENATE(A1," g ",1/3)', "24 g 0.333333333333333"],
  ['=MINIFS(A1:A3,B1:B3,"lid")', 0],
  ['=MAXIFS(A1:A3,B1:B3,"lid")', 0],
  ['=MINIFS(A1:A3,B1:B3,"tin")', 24],
  ["=TRUE<>1", true],
  ['=TRUE<>"TRUE"', true],
  ["=TRUE<>TRUE", false],
  ["=A5=A4", true],
  ["=A5<>A4", false],
];

test("what single functions and operators give is what other spreadsheets give", async () => {
  expect(await answers(EXPECTED.map(([formula]) => formula))).toEqual(EXPECTED.map(([, answer]) => answer));
});

test.each(["=LOOKUP(2,C1:C3,A1)", '=SUMIF(B1:B3,"tin",A1)', '=AVERAGEIF(B1:B3,"tin",A1)', "=LOOKUP(2,C1:C3,A1:A2)"])(
  "%s leaves the cells that others read as they are",
  async (formula) => {
    const found = await answers([formula, "=SUM(A1)", "=COUNT(A1:A2)", "=A1*2", "=SUM(A1,1)"]);
    expect(found.slice(1)).toEqual([24, 2, 48, 25]);
  },
);

test.each([
  [0.1 + 0.2, "0.3"],
  [-1e-7, "-1E-07"],
  [1e21, "1E+21"],
  [123456789012345680, "123456789012346000"],
])("%d is written %s", (value, text) => expect(numberAsText(value)).toBe(text));
