import { notCalculatedWithin } from "../../../src/problems/workbook/workbookProblems";
import { explainCell } from "../../../src/explanation/explainCell";
import { shareAsValues } from "../../../src/sharing/shareAsValues";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";

jest.setTimeout(30_000);

let open: HeadlessWorkbook;
beforeEach(async () => {
  open = await openHeadlessWorkbook();
  await open.type(FIRST_SHEET, "B3", 32);
  await open.type(FIRST_SHEET, "B4", "=RETORT.MOISTURE.WET(25,35,B3)");
  await open.settled();
});
afterEach(() => open.close());

test("from a change until its results stand, the local workbook says that it calculates", async () => {
  expect((await open.workbook.calculation()).state).toBe("done");
  await open.type(FIRST_SHEET, "B3", 31);
  expect((await open.workbook.calculation()).state).toBe("calculating");
  expect((await open.workbook.look({ sheet: FIRST_SHEET, cell: "B4" })).calculation.state).toBe("calculating");
  await open.settled();
  expect((await open.workbook.calculation()).state).toBe("done");
});

test("a cell explained, or a sheet shared, right after an input has changed has the value that comes of it", async () => {
  await open.type(FIRST_SHEET, "B3", 31);
  expect((await explainCell(open.workbook, { sheet: FIRST_SHEET, cell: "B4" })).calls[0]?.result).toBe("0.4 (40 %)");
  await open.type(FIRST_SHEET, "B3", 30);
  const { copy } = await shareAsValues(open.workbook, FIRST_SHEET, "2026-03-14");
  expect((await open.workbook.read(copy, "B4")).rows[0]?.[0]).toMatchObject({ value: 0.5, formula: "" });
});

test("a calculation that does not end is said in words", () => {
  expect(notCalculatedWithin(60)).toBe(
    "No cell was calculated for 60 s. Share into a file of its own or fewer cells at once, or write formulas nested thousands of times in several cells.",
  );
});
