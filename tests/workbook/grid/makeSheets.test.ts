import { nameJustTaken } from "../../../src/problems/workbookProblems";
import type { SheetPlan } from "../../../src/workbook/SheetPlan";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";

jest.setTimeout(30_000);

let open: HeadlessWorkbook;
beforeAll(async () => {
  open = await openHeadlessWorkbook();
});
afterAll(() => open.close());

const beside: SheetPlan = { name: "Record", cells: [], columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" };

test("a copy whose name somebody takes meanwhile is taken away again, and the other's sheet stays", async () => {
  await open.type(FIRST_SHEET, "A1", 25);
  await open.settled();
  const read = await open.workbook.readUsed(FIRST_SHEET);
  const copying = open.workbook.copyWithValues(FIRST_SHEET, { name: "Copy", read, areas: [], beside });
  setTimeout(() => open.engine.book.insertSheet("Copy"), 0);
  await expect(copying).rejects.toThrow(nameJustTaken);
  await open.settled();
  expect(await open.workbook.sheetNames()).toEqual([FIRST_SHEET, "Copy"]);
  expect((await open.workbook.readUsed("Copy")).rows).toEqual([]);
});
