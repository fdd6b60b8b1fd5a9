import { IUniverInstanceService, UniverInstanceType, type ICellData, type Workbook } from "@univerjs/core";
import { SetRangeValuesCommand, SheetInterceptorService } from "@univerjs/sheets";
import { heldSheets } from "../../../src/workbook/grid/reading/heldSheets";
import { replaceSheets } from "../../../src/workbook/grid/writing/GridSheet";
import { openFile, openXlsx } from "../../../src/workbench/xlsx/openXlsx";
import { saveXlsx } from "../../../src/workbench/xlsx/saveXlsx";
import type { OpenedFile } from "../../../src/workbench/xlsx/inPlace/OpenedFile";
import { textOf } from "../../xlsx/package/partsIn";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../headlessWorkbook";
import { packageOf } from "./packageOf";

jest.setTimeout(60_000);

let open: HeadlessWorkbook;
beforeEach(async () => void (open = await openHeadlessWorkbook()));
afterEach(() => open.close());

// 1 a percentage on yellow that may be typed into, 2 a date, 3 text, 4 plain but for its protection.
const STYLES =
  '<styleSheet><fonts count="1"><font><sz val="11"/></font></fonts><fills count="3"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill><fill><patternFill patternType="solid"><fgColor rgb="FFFFFF00"/></patternFill></fill></fills>' +
  '<borders count="1"><border/></borders><cellXfs count="5"><xf/><xf numFmtId="10" fillId="2" applyNumberFormat="1" applyFill="1"><protection locked="0"/></xf>' +
  '<xf numFmtId="14" applyNumberFormat="1"/><xf numFmtId="49" applyNumberFormat="1"/><xf><protection locked="0"/></xf></cellXfs></styleSheet>';
const COLUMNS =
  '<cols><col min="2" max="2" width="12" style="1" customWidth="1"/><col min="3" max="3" style="2"/><col min="4" max="5" style="3"/><col min="6" max="16384" style="4"/></cols>';
const ROWS =
  '<row r="1"><c r="A1"><v>1</v></c><c r="B1"><v>2</v></c><c r="C1" s="1"/><c r="D1"/></row><row r="12" s="1" customFormat="1"/><row r="13" s="1"/>';
const SHEET = `<worksheet>${COLUMNS}<sheetData>${ROWS}</sheetData></worksheet>`;
const FILE = packageOf({ sheets: { Tins: SHEET }, further: { "xl/styles.xml": STYLES } });

/** As typed by hand: with everything that the page does to it on its way into the cell. */
async function typed(cell: string, text: string): Promise<void> {
  const book = open.engine.injector.get(IUniverInstanceService).getUnit<Workbook>(open.engine.book.getId(), UniverInstanceType.UNIVER_SHEET);
  const sheet = book?.getSheetBySheetName("Tins");
  const range = open.engine.book.getSheetByName("Tins")?.getRange(cell).getRange();
  if (!book || !sheet || !range) throw new Error(`no ${cell}`);
  const own = sheet.getCellRaw(range.startRow, range.startColumn) ?? {};
  const given: ICellData = text.startsWith("=") ? { ...own, f: text, v: null } : { ...own, v: text };
  const value = open.engine.injector.get(SheetInterceptorService).onWriteCell(book, sheet, range.startRow, range.startColumn, given);
  open.engine.api.syncExecuteCommand(SetRangeValuesCommand.id, { unitId: book.getUnitId(), subUnitId: sheet.getSheetId(), range, value });
  await open.engine.settled();
}

const shown = async (cell: string): Promise<unknown> => {
  const reading = (await open.workbook.read("Tins", cell)).rows[0]?.[0];
  return [reading?.value, reading?.shown];
};

async function cellsOf(file: OpenedFile): Promise<string> {
  const saved = await file.saved();
  if ("because" in saved) throw new Error(saved.because);
  return textOf(saved.content, "xl/worksheets/sheet1.xml");
}

test.each([
  ["a percentage in its column", "B5", "0.25", [0.25, "25.00%"], '<c r="B5" s="1"><v>0.25</v></c>'],
  ["a percentage typed as one", "B5", "25%", [0.25, "25.00%"], '<c r="B5" s="1"><v>0.25</v></c>'],
  ["a formula in it", "B5", "=1/4", [0.25, "25.00%"], '<c r="B5" s="1"><f>1/4</f><v>0.25</v></c>'],
  ["a day in its column", "C5", "2025-12-10", [46_001, "12-10-25"], '<c r="C5" s="2"><v>46001</v></c>'],
  ["a number in a column of days", "C5", "46001", [46_001, "12-10-25"], '<c r="C5" s="2"><v>46001</v></c>'],
  ["figures in a column of texts", "D5", "008", ["008", "008"], '<c r="D5" s="3" t="inlineStr"><is><t>008</t></is></c>'],
  ["what looks like a formula in one", "E5", "=1+1", ["=1+1", "=1+1"], '<c r="E5" s="3" t="inlineStr"><is><t>=1+1</t></is></c>'],
  ["a number in a column that may be typed into", "G5", "7", [7, "7"], '<c r="G5" s="4"><v>7</v></c>'],
  ["a number in a row of percentages", "A12", "0.5", [0.5, "50.00%"], '<c r="A12" s="1"><v>0.5</v></c>'],
  ["a number where row and column say different things", "D12", "0.5", [0.5, "50.00%"], '<c r="D12" s="1"><v>0.5</v></c>'],
  ["a number in a row whose look is said to count for nothing", "A13", "0.5", [0.5, "0.5"], '<c r="A13"><v>0.5</v></c>'],
  ["a number outside of all", "A5", "0.5", [0.5, "0.5"], '<c r="A5"><v>0.5</v></c>'],
])("%s has the look of its row, or else its column", async (_what, cell, text, seen, inFile) => {
  const { opened } = await openFile(open.engine, FILE);
  await typed(cell, text);
  expect(await shown(cell)).toEqual(seen);
  expect(await cellsOf(opened)).toContain(inFile);
});

test("cells of the file keep the look that they have, plain or not", async () => {
  const { opened } = await openFile(open.engine, FILE);
  expect([await shown("B1"), open.engine.book.getSheetByName("Tins")?.getRange("B1").getBackground()]).toEqual([[2, "2"], "#fff"]);
  for (const cell of ["B1", "C1", "D1"]) await typed(cell, "0.5");
  expect([await shown("B1"), await shown("C1"), await shown("D1")]).toEqual([[0.5, "0.5"], [0.5, "50.00%"], [0.5, "0.5"]]); // prettier-ignore
  expect(await cellsOf(opened)).toContain('<c r="B1"><v>0.5</v></c><c r="C1" s="1"><v>0.5</v></c><c r="D1"><v>0.5</v></c>');
});

test("a look that is changed by hand changes that of the line in this alone", async () => {
  const { opened } = await openFile(open.engine, FILE);
  await typed("B5", "0.25");
  open.engine.book.getSheetByName("Tins")?.getRange("B5").setFontWeight("bold");
  open.engine.book.getSheetByName("Tins")?.getRange("B6").setFontWeight("bold");
  const saved = await opened.saved();
  const content = "content" in saved ? saved.content : new Uint8Array();
  expect(await textOf(content, "xl/worksheets/sheet1.xml")).toContain(
    '<row r="5"><c r="B5" s="5"><v>0.25</v></c></row><row r="6"><c r="B6" s="5"/></row>',
  );
  expect(await textOf(content, "xl/styles.xml")).toMatch(/<xf numFmtId="10" fontId="1" fillId="2" [^>]*><protection locked="0"\/><\/xf><\/cellXfs>/);
});

test("what is put in otherwise than by typing has the look, too, and sheets that come in anew keep theirs", async () => {
  const { opened } = await openFile(open.engine, FILE);
  await open.type("Tins", "B7", 0.25);
  await open.settled();
  expect(await shown("B7")).toEqual([0.25, "25.00%"]);
  expect(await cellsOf(opened)).toContain('<c r="B7" s="1"><v>0.25</v></c>');
  await replaceSheets(open.engine, structuredClone(heldSheets(open.engine)));
  await typed("D9", "008");
  expect([await shown("B7"), await shown("D9")]).toEqual([[0.25, "25.00%"], ["008", "008"]]); // prettier-ignore
});

test("a file that is written anew has the looks of rows and columns", async () => {
  await openXlsx(open.engine, FILE);
  await typed("D5", "008");
  await typed("C5", "2025-12-10");
  const bytes = await saveXlsx(open.engine);
  await openXlsx(open.engine, bytes);
  expect([await shown("D5"), await shown("C5"), await shown("B1")]).toEqual([["008", "008"], [46_001, "12-10-25"], [2, "2"]]); // prettier-ignore
  await typed("D6", "009");
  await typed("B12", "0.5");
  expect([await shown("D6"), await shown("B12")]).toEqual([["009", "009"], [0.5, "50.00%"]]); // prettier-ignore
});
