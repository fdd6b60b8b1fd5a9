import { DataValidationCacheService, SheetsDataValidationValidatorService } from "@univerjs/sheets-data-validation";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../../workbench/headlessWorkbook";

jest.setTimeout(60_000);

const RULED = { startRow: 1, startColumn: 0, endRow: 6, endColumn: 0 };

let open: HeadlessWorkbook;
let sheet: FWorksheet;
beforeEach(async () => {
  open = await openHeadlessWorkbook();
  const name = await open.workbook.addSheet({
    name: "Ruled",
    cells: [{ cell: "A3", content: 50 }],
    columnWidths: [],
    entryRules: [{ range: "A2:A5", allow: { kind: "number", atLeast: 0, atMost: 10 }, promptTitle: "", prompt: "", refusal: "No." }],
    frozenRows: 0,
    startAt: "A1",
  });
  await open.settled();
  sheet = open.engine.book.getSheetByName(name) as FWorksheet;
});
afterEach(() => open.close());

const check = (sheetId = sheet.getSheetId()): Promise<unknown> =>
  open.engine.injector.get(SheetsDataValidationValidatorService).validatorRanges(open.engine.book.getId(), sheetId, [RULED]);
const found = (): unknown[] =>
  [1, 2, 3, 4].map((row) => open.engine.injector.get(DataValidationCacheService).getValue(open.engine.book.getId(), sheet.getSheetId(), row, 0));

test("what was found out about an entry does not stay behind where rows come in, and is found out anew", async () => {
  await check();
  expect(found()).toEqual([undefined, "invalid", undefined, undefined]);
  sheet.insertRowsBefore(2, 1);
  await Promise.resolve();
  expect(found()).not.toContain("invalid");
  await check();
  expect(found()).toEqual([undefined, undefined, "invalid", undefined]);
  sheet.deleteRows(1, 2);
  await check();
  expect(found()).toEqual(["invalid", undefined, undefined, undefined]);
});

test("a check of a sheet that is gone by then has nothing to tell and breaks off nothing", async () => {
  const gone = sheet.getSheetId();
  open.engine.book.deleteSheet(sheet);
  await expect(check(gone)).resolves.toEqual([]);
  await expect(check("never there")).resolves.toEqual([]);
});
