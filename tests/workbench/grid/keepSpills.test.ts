import { filledByFormula } from "../../../src/problems/workbook/entryProblems";
import { keepSpills } from "../../../src/workbench/grid/keepSpills";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../headlessWorkbook";

jest.setTimeout(60_000);

let open: HeadlessWorkbook;
let said: string[];
beforeEach(async () => {
  open = await openHeadlessWorkbook();
  said = [];
  for (const [place, value] of [10, 3, 4].entries()) await open.type(FIRST_SHEET, `A${place + 1}`, value);
  await open.type(FIRST_SHEET, "D1", "=A1:A3*2");
  await open.settled();
  keepSpills(open.engine, (sentence) => void said.push(sentence));
});
afterEach(() => open.close());

const shown = async (range: string): Promise<unknown> => {
  await open.settled();
  return (await open.workbook.read(FIRST_SHEET, range)).rows.flat().map(({ value }) => value);
};
const rangeOf = (cells: string) => open.engine.book.getActiveSheet().getRange(cells);

test("the words name the cell, the formula and all it fills", () => {
  expect(filledByFormula("D2", "D1", "D1:D3")).toBe(
    "Not entered: the formula in D1 fills D1:D3, and no part of that can be changed alone. Change the formula in D1, or type beside D1:D3. D2 stays as it was.",
  );
});

test.each([
  ["a number", () => rangeOf("D2").setValue(5), "D2"],
  ["a formula", () => rangeOf("D3").setValue({ f: "=1+1" }), "D3"],
  ["one content for a range", () => rangeOf("C2:D3").setValue("x"), "D2"],
  ["a block", () => rangeOf("C3:D4").setValues([[1, 2], [3, 4]]), "D3"], // prettier-ignore
])("%s does not go into a part of what a formula fills, and nothing of it is entered", async (_what, enter, cell) => {
  enter();
  expect(await shown("C1:D4")).toEqual([null, 20, null, 6, null, 8, null, null]);
  expect(said).toEqual([filledByFormula(cell, "D1", "D1:D3")]);
});

test("looks, blanks and cells beside it go in, and so does what takes the formula's own place", async () => {
  rangeOf("D2").setFontWeight("bold");
  rangeOf("D2").clearContent();
  await open.type(FIRST_SHEET, "D4", 1);
  await open.type(FIRST_SHEET, "E2", 2);
  expect([await shown("D1:D4"), await shown("E2")]).toEqual([[20, 6, 8, 1], [2]]);
  rangeOf("D1:D2").setValues([[7], [8]]);
  expect([await shown("D1:D4"), said]).toEqual([[7, 8, null, 1], []]);
});

test("what stands in the way of a formula can be changed", async () => {
  await open.type(FIRST_SHEET, "G2", 1);
  await open.type(FIRST_SHEET, "G1", "=A1:A3*2");
  await open.settled();
  await open.type(FIRST_SHEET, "G2", 5);
  expect([await shown("G1:G2"), said]).toEqual([["#SPILL!", 5], []]);
  rangeOf("G2").clearContent();
  expect(await shown("G1:G3")).toEqual([20, 6, 8]);
});
