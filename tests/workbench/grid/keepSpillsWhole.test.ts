import { Dimension, type IRange } from "@univerjs/core";
import { AutoFillCommand, MoveRangeCommand } from "@univerjs/sheets";
import { filledNotChanged } from "../../../src/problems/workbook/entryProblems";
import { keepSpillsWhole } from "../../../src/workbench/grid/keepSpillsWhole";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../headlessWorkbook";

jest.setTimeout(60_000);

let open: HeadlessWorkbook;
let said: string[];
beforeEach(async () => {
  open = await openHeadlessWorkbook();
  said = [];
  for (const [place, value] of [10, 3, 4, 7].entries()) await open.type(FIRST_SHEET, `A${place + 1}`, value);
  await open.type(FIRST_SHEET, "D1", "=A1:A3*2");
  await open.settled();
  keepSpillsWhole(open.engine, (sentence) => void said.push(sentence));
});
afterEach(() => open.close());

const sheet = () => open.engine.book.getActiveSheet();
const range = (cells: string): IRange => sheet().getRange(cells).getRange();
const filled = async (cells = "D1:D3"): Promise<unknown> => {
  await open.settled();
  return (await open.workbook.read(FIRST_SHEET, cells)).rows.flat().map(({ value }) => value);
};
const drag = (from: string, to: string, toSubUnitId?: string): Promise<unknown> =>
  open.engine.api.executeCommand(MoveRangeCommand.id, { fromRange: range(from), toRange: range(to), ...(toSubUnitId && { toSubUnitId }) });
const fill = (from: string, to: string): Promise<unknown> =>
  open.engine.api.executeCommand(AutoFillCommand.id, { sourceRange: range(from), targetRange: range(to) });

test("the words name the cell, the formula and all it fills", () => {
  expect(filledNotChanged("D2", "D1", "D1:D3")).toBe(
    "Nothing was changed: the formula in D1 fills D1:D3, and no part of that can be changed or moved alone. Choose cells beside D1:D3, or all of D1:D3. D2 stays as it was.",
  );
});

test.each<[string, () => unknown, string]>([
  ["a cell dragged into it", () => drag("A4", "D3"), "D3"],
  ["cells dragged across it", () => drag("A2:B3", "C3:D4"), "D3"],
  ["a part of it dragged away", () => drag("D2:E3", "G2:H3"), "D2"],
  ["a cell filled across it", () => fill("A2", "A2:E2"), "D2"],
  ["its own formula filled down", () => fill("D1", "D1:D6"), "D2"],
  ["cells put in above a part of it", () => sheet().getRange("D2").insertCells(Dimension.ROWS), "D2"],
  ["cells put in before a part of it", () => sheet().getRange("B2").insertCells(Dimension.COLUMNS), "D2"],
  ["cells taken out above a part of it", () => sheet().getRange("D2").deleteCells(Dimension.ROWS), "D2"],
  ["cells taken out before a part of it", () => sheet().getRange("A2").deleteCells(Dimension.COLUMNS), "D2"],
])("nothing is changed by %s", async (_what, change, cell) => {
  await change();
  expect([await filled(), await filled("A1:A4"), said]).toEqual([[20, 6, 8], [10, 3, 4, 7], [filledNotChanged(cell, "D1", "D1:D3")]]); // prettier-ignore
  open.engine.book.undo();
  // The last step was the formula.
  expect(await filled()).toEqual([null, null, null]);
});

test("what is beside it, or takes all of it along, is moved and filled", async () => {
  await drag("A4", "D4");
  await fill("A3", "A3:C3");
  expect([await filled("D1:D4"), await filled("C3"), said]).toEqual([[20, 6, 8, 7], [4], []]);
  await drag("D1:D3", "F2:F4");
  expect([await filled("F1:F4"), await filled(), said]).toEqual([[null, 20, 6, 8], [null, null, null], []]);
  await drag("F2", "F3");
  expect([await filled("F2:F5"), said]).toEqual([[null, 20, 6, 8], []]);
  sheet().getRange("F1").insertCells(Dimension.ROWS);
  expect([await filled("F3:F6"), said]).toEqual([[null, 20, 6, 8], []]);
  await drag("D4", "F4");
  expect([await filled("F4:F6"), said]).toEqual([[7, null, null], []]);
});

test("it is kept on a sheet that something is dragged to from another", async () => {
  const other = open.engine.book.insertSheet("Other");
  await open.type("Other", "B1", 5);
  const first = open.engine.book.getSheetByName(FIRST_SHEET)?.getSheetId();
  await drag("B1", "D2", first);
  expect([await filled(), said, other.getRange("B1").getValue()]).toEqual([[20, 6, 8], [filledNotChanged("D2", "D1", "D1:D3")], 5]);
});

test("what stands in the way of a formula can be dragged away", async () => {
  await open.type(FIRST_SHEET, "G2", 1);
  await open.type(FIRST_SHEET, "G1", "=A1:A3*2");
  await drag("G2", "H2");
  expect([await filled("G1:H3"), said]).toEqual([[20, null, 6, 1, 8, null], []]);
});
