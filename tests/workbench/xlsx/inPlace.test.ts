import { readFileSync } from "node:fs";
import path from "node:path";
import { Dimension } from "@univerjs/core";
import { MoveRangeCommand, ReorderRangeCommand } from "@univerjs/sheets";
import { Workbook as FileWorkbook } from "exceljs";
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { gridSheet, insertGridSheet } from "../../../src/workbook/grid/writing/GridSheet";
import type { OpenedFile, SavedInPlace } from "../../../src/workbench/xlsx/inPlace/OpenedFile";
import { openFile, openXlsx } from "../../../src/workbench/xlsx/openXlsx";
import { saveXlsx } from "../../../src/workbench/xlsx/saveXlsx";
import { partsDiffering, partsIn, textOf, withoutCells } from "../../xlsx/package/partsIn";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../headlessWorkbook";
import { packageOf } from "./packageOf";

jest.setTimeout(60_000);

const FILES = path.join(__dirname, "files");
const fileNamed = (name: string): Uint8Array<ArrayBuffer> => new Uint8Array(readFileSync(path.join(FILES, name)));

let open: HeadlessWorkbook;
beforeEach(async () => {
  open = await openHeadlessWorkbook();
});
afterEach(() => open.close());

async function opened(content: Uint8Array<ArrayBuffer>): Promise<OpenedFile> {
  return (await openFile(open.engine, content)).opened;
}

function contentOf(saved: SavedInPlace): Uint8Array<ArrayBuffer> {
  if ("because" in saved) throw new Error(saved.because);
  return saved.content;
}

const sheetNamed = (name: string) => {
  const sheet = open.engine.book.getSheetByName(name);
  if (sheet === null) throw new Error(`no sheet ${name}`);
  return sheet;
};

describe.each(["openpyxl.xlsx", "libreoffice.xlsx", "gnumeric.xlsx", "beside.xlsx", "days1904.xlsx"])("%s opened in the local workbook", (name) => {
  const content = fileNamed(name);

  test("and saved without a change is the same file, part by part", async () => {
    const file = await opened(content);
    expect(await partsDiffering(content, contentOf(await file.saved()))).toEqual({ changed: [], added: [], gone: [] });
  });

  test("with something typed has that, what follows from it, and everything else as it was", async () => {
    const file = await opened(content);
    const [sheet = ""] = await open.workbook.sheetNames();
    await open.type(sheet, "X40", 12.5);
    await open.type(sheet, "X41", "=X40*2");
    await open.type(sheet, "X42", "'007");
    const bytes = contentOf(await file.saved());
    const { changed, added, gone } = await partsDiffering(content, bytes);
    const [part = "", ...others] = changed.filter((one) => one.startsWith("xl/worksheets/"));
    expect([others, added, gone.filter((one) => one !== "xl/calcChain.xml")]).toEqual([[], [], []]);
    const [before, after] = [await textOf(content, part), await textOf(bytes, part)].map((markup) =>
      withoutCells(markup, ["X40", "X41", "X42"])
        .replace(/<row r="4[012]"><\/row>/g, "")
        .replace(/(<(?:\w+:)?dimension ref=")[^"]*/, "$1"),
    );
    expect(after).toBe(before);
    const rest = changed.filter((one) => one !== part && !/Content_Types|workbook\.xml\.rels/.test(one));
    expect(rest).toEqual([]);
    await openXlsx(open.engine, bytes);
    expect((await open.workbook.read(sheet, "X40:X42")).rows.map(([cell]) => [cell?.formula, cell?.value])).toEqual([["", 12.5], ["=X40*2", 25], ["", "007"]]); // prettier-ignore
  });
});

const KILN =
  '<row r="1"><c r="A1"><v>10</v></c><c r="B1"><f t="shared" ref="B1:B2" si="0">A1*2</f><v>20</v></c></row><row r="2"><c r="A2" s="1"><v>3</v></c><c r="B2"><f t="shared" si="0"/><v>6</v></c></row>';
const STYLES =
  '<styleSheet><fonts count="2"><font><sz val="11"/><u/><name val="Arial"/></font><font><sz val="9"/></font></fonts><fills count="1"><fill><patternFill patternType="none"/></fill></fills>' +
  '<borders count="1"><border/></borders><cellXfs count="2"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/><xf numFmtId="2" fontId="0" fillId="0" borderId="0"><protection locked="0"/></xf></cellXfs></styleSheet>';
const small = (further: Readonly<Record<string, string>> = {}): Uint8Array<ArrayBuffer> =>
  packageOf({
    sheets: { Kiln: KILN, Tins: '<row r="1"><c r="A1"><f>Kiln!A1+1</f><v>11</v></c></row>' },
    further: { "xl/styles.xml": STYLES, ...further },
  });
const FIRST = "xl/worksheets/sheet1.xml";
const SECOND = "xl/worksheets/sheet2.xml";
const rowsIn = async (bytes: Uint8Array, part: string): Promise<string> => /<sheetData>(.*)<\/sheetData>/s.exec(await textOf(bytes, part))?.[1] ?? "";

describe("a change in the grid", () => {
  test("of an input changes the values that follow from it on every sheet, and no formula", async () => {
    const file = await opened(small());
    await open.type("Kiln", "A1", 100);
    const bytes = contentOf(await file.saved());
    expect(await rowsIn(bytes, FIRST)).toBe(KILN.replace("<v>10</v>", "<v>100</v>").replace("<v>20</v>", "<v>200</v>"));
    expect(await rowsIn(bytes, SECOND)).toBe('<row r="1"><c r="A1"><f>Kiln!A1+1</f><v>101</v></c></row>');
  });

  test("of a look changes that of the look alone: the rest of it stays, as what is not known here does", async () => {
    const file = await opened(small());
    sheetNamed("Kiln").getRange("A2").setFontWeight("bold");
    const bytes = contentOf(await file.saved());
    expect(await rowsIn(bytes, FIRST)).toBe(KILN.replace('s="1"', 's="2"'));
    const styles = await textOf(bytes, "xl/styles.xml");
    expect(styles).toContain('<font><b/><u/><sz val="11"/><name val="Arial"/></font></fonts>');
    expect(styles).toContain('<xf numFmtId="2" fontId="2" fillId="0" borderId="0" applyFont="1"><protection locked="0"/></xf></cellXfs>');
  });

  test("that fills an area is one of the size of its answer; what it no longer fills is blank", async () => {
    const file = await opened(small());
    await open.type("Kiln", "D1", "=A1:A2*2");
    const bytes = contentOf(await file.saved());
    expect(await rowsIn(bytes, FIRST)).toContain('<c r="D1" cm="1"><f t="array" ref="D1:D2">A1:A2*2</f><v>20</v></c>');
    expect(await rowsIn(bytes, FIRST)).toContain('<c r="D2"><v>6</v></c>');
    const again = file.after(bytes);
    await open.type("Kiln", "D1", "=A1*2");
    const after = await rowsIn(contentOf(await again.saved()), FIRST);
    expect(after).toContain('<c r="D1"><f>A1*2</f><v>20</v></c>');
    expect(after).toContain('<c r="D2"/>');
  });

  const SPILLS =
    '<row r="1"><c r="A1"><v>10</v></c><c r="D1" cm="1"><f t="array" ref="D1:D3">A1:A3*2</f><v>20</v></c></row>' +
    '<row r="2"><c r="A2"><v>3</v></c><c r="D2"><v>6</v></c></row><row r="3"><c r="A3"><v>4</v></c><c r="D3"><v>8</v></c></row>' +
    '<row r="9"><c r="F9" cm="1"><f t="array" ref="F9:F10">_xlfn._xlws.FILTER(A1:A3,A1:A3&gt;3)</f><v>10</v></c></row>' +
    '<row r="10"><c r="F10"><v>4</v></c></row>';

  test("that stands in the way of a formula which fills cells leaves it one that does", async () => {
    const file = await opened(packageOf({ sheets: { Kiln: SPILLS }, further: { "xl/styles.xml": STYLES } }));
    await open.type("Kiln", "D2", 5);
    const rows = await rowsIn(contentOf(await file.saved()), FIRST);
    expect(rows).toContain('<c r="D1" cm="1" t="e"><f t="array" ref="D1">A1:A3*2</f><v>#VALUE!</v></c>');
    expect(rows).toContain('<c r="D2"><v>5</v></c>');
    expect(rows).toContain('<c r="D3"/>');
    open.engine.book.undo();
    await open.settled();
    expect(await rowsIn(contentOf(await file.saved()), FIRST)).toBe(SPILLS);
  });

  test("that makes a formula which filled cells give one value leaves it one that fills as many as it gives", async () => {
    const file = await opened(packageOf({ sheets: { Kiln: SPILLS }, further: { "xl/styles.xml": STYLES } }));
    await open.type("Kiln", "A3", 1);
    await open.settled();
    expect((await open.workbook.read("Kiln", "F9:F10")).rows.map(([cell]) => [cell?.value, cell?.spill])).toEqual([[10, ""], [null, ""]]); // prettier-ignore
    const rows = await rowsIn(contentOf(await file.saved()), FIRST);
    expect(rows).toContain('<c r="F9" cm="1"><f t="array" ref="F9">_xlfn._xlws.FILTER(A1:A3,A1:A3&gt;3)</f><v>10</v></c>');
    expect(rows).toContain('<c r="F10"/>');
  });

  test("in a file that counts from 1904 is counted as the file does", async () => {
    const content = fileNamed("days1904.xlsx");
    const file = await opened(content);
    const [sheet = ""] = await open.workbook.sheetNames();
    const day = (await open.workbook.read(sheet, "A1")).rows[0]?.[0]?.value as number;
    open.engine.book
      .getSheetByName(sheet)
      ?.getRange("A1")
      .setValue({ v: day + 1 });
    await open.settled();
    const bytes = contentOf(await file.saved());
    await openXlsx(open.engine, bytes);
    expect((await open.workbook.read(sheet, "A1")).rows[0]?.[0]?.value).toBe(day + 1);
  });

  test("of a sheet's name, place or being there is made in the file", async () => {
    const names =
      '<workbook><bookViews><workbookView activeTab="1"/></bookViews><sheets><sheet name="Kiln" sheetId="1" r:id="s1"/><sheet name="Tins" sheetId="2" r:id="s2"/></sheets><definedNames><definedName name="_xlnm.Print_Area" localSheetId="1">Tins!$A$1</definedName></definedNames></workbook>';
    const file = await opened(small({ "xl/workbook.xml": names.replace("<workbook>", '<workbook xmlns:r="r">') }));
    sheetNamed("Kiln").setName("It's hot");
    const renamed = contentOf(await file.saved());
    expect(await rowsIn(renamed, SECOND)).toBe(`<row r="1"><c r="A1"><f>'It''s hot'!A1+1</f><v>11</v></c></row>`);
    expect((await partsDiffering(small(), renamed)).changed).toEqual(["xl/workbook.xml", SECOND]);
    const again = file.after(renamed);
    open.engine.book.setActiveSheet(sheetNamed("Tins"));
    open.engine.book.moveSheet(sheetNamed("Tins"), 0);
    const moved = contentOf(await again.saved());
    const workbook = await textOf(moved, "xl/workbook.xml");
    expect(workbook.indexOf('name="Tins"')).toBeLessThan(workbook.indexOf('name="It\'s hot"'));
    expect(workbook).toContain('localSheetId="0">Tins!$A$1');
    expect(workbook).toContain('activeTab="0"');
    expect((await partsDiffering(renamed, moved)).changed).toEqual(["xl/workbook.xml"]);
    const third = again.after(moved);
    open.engine.book.deleteSheet(sheetNamed("It's hot"));
    await open.settled();
    const left = contentOf(await third.saved());
    expect((await partsDiffering(moved, left)).gone).toEqual([FIRST]);
    await openXlsx(open.engine, left);
    expect(await open.workbook.sheetNames()).toEqual(["Tins"]);
  });

  test("that took a sheet out, was saved and is taken back, brings the sheet back with all that the file has of it", async () => {
    const content = fileNamed("beside.xlsx");
    const file = await opened(content);
    const [first = ""] = await open.workbook.sheetNames();
    open.engine.book.insertSheet("Further");
    open.engine.book.deleteSheet(sheetNamed(first));
    await open.settled();
    expect((await partsDiffering(content, contentOf(await file.saved()))).gone).toContain(FIRST);
    open.engine.book.undo();
    open.engine.book.undo();
    await open.settled();
    expect(await partsDiffering(content, contentOf(await file.saved()))).toEqual({ changed: [], added: [], gone: [] });
  });

  test("of sizes changes those rows and columns alone", async () => {
    const sheet = `<worksheet><cols><col min="1" max="3" width="9" hidden="1"/></cols><sheetData>${KILN}</sheetData></worksheet>`;
    const file = await opened(small({ [FIRST]: sheet }));
    sheetNamed("Kiln").setColumnWidths(1, 1, 75);
    sheetNamed("Kiln").setRowHeightsForced(1, 1, 40);
    sheetNamed("Kiln").setRowHeightsForced(5, 1, 40);
    const after = await textOf(contentOf(await file.saved()), FIRST);
    expect(after).toContain(
      '<cols><col min="1" max="1" width="9" hidden="1"/><col min="2" max="2" width="10" hidden="1" customWidth="1"/><col min="3" max="3" width="9" hidden="1"/></cols>',
    );
    expect(after).toContain('<row r="2" ht="30" customHeight="1"><c r="A2"');
    expect(after).toContain('<row r="6" ht="30" customHeight="1"/></sheetData>');
  });

  test("that adds a run sheet brings it with its looks, rules, page and chart, and leaves the rest as it was", async () => {
    const content = fileNamed("beside.xlsx");
    const file = await opened(content);
    const plan = buildRunSheet({ kind: "drying", weighIns: 6, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: 2 });
    insertGridSheet(open.engine, gridSheet(plan, "Run 1"));
    await open.type("Run 1", "C11", 25);
    const bytes = contentOf(await file.saved());
    const { changed, added, gone } = await partsDiffering(content, bytes);
    expect([[...changed].sort(), gone]).toEqual([["[Content_Types].xml", "xl/_rels/workbook.xml.rels", "xl/styles.xml", "xl/workbook.xml"], []]);
    const chart = added.find((part) => /charts\/chart\d+\.xml$/.test(part)) ?? "";
    expect(await textOf(bytes, chart)).toContain("'Run 1'!");
    await openXlsx(open.engine, bytes);
    expect((await open.workbook.read("Run 1", "C11")).rows[0]?.[0]?.value).toBe(25);
    expect(open.engine.book.getSheetByName("Run 1")?.getDataValidations().length).toBeGreaterThan(5);
  });

  test("of a function that the program before did not know is written down", async () => {
    const content = packageOf({
      sheets: {
        Kiln: '<row r="1"><c r="A1" t="e"><f>_xldudf_RETORT_MOLARMASS("H2O")</f><v>#NAME?</v></c><c r="B1" t="e"><f>A1*2</f><v>#NAME?</v></c></row>',
      },
    });
    const file = await opened(content);
    expect(await rowsIn(contentOf(await file.saved()), FIRST)).toBe(
      '<row r="1"><c r="A1"><f>_xldudf_RETORT_MOLARMASS("H2O")</f><v>18.015</v></c><c r="B1"><f>A1*2</f><v>36.03</v></c></row>',
    );
  });
});

const MOVED = 'Rows, columns or cells of sheet "Kiln" were put in, taken out or moved.';

const move = (params: object): unknown =>
  open.engine.api.executeCommand(MoveRangeCommand.id, { fromRange: areaOf(0, 0), toRange: areaOf(7, 5), fromSubUnitId: idNamed("Kiln"), ...params });
const idNamed = (name: string): string => sheetNamed(name).getSheetId();
const areaOf = (row: number, column: number) => ({ startRow: row, endRow: row, startColumn: column, endColumn: column });

/** Every way in which cells of a sheet come into other places. */
const MOVES: readonly [what: string, move: () => unknown][] = [
  ["a row put in", () => sheetNamed("Kiln").insertRows(0, 1)],
  ["a row taken out", () => sheetNamed("Kiln").deleteRows(0, 1)],
  ["a column put in", () => sheetNamed("Kiln").insertColumns(0, 1)],
  ["a column taken out", () => sheetNamed("Kiln").deleteColumns(0, 1)],
  ["a row dragged", () => sheetNamed("Kiln").moveRows(sheetNamed("Kiln").getRange(0, 0, 1, 5), 3)],
  ["a column dragged", () => sheetNamed("Kiln").moveColumns(sheetNamed("Kiln").getRange(0, 0, 5, 1), 3)],
  ["cells put in", () => sheetNamed("Kiln").getRange(0, 0, 1, 1).insertCells(Dimension.ROWS)],
  ["cells taken out", () => sheetNamed("Kiln").getRange(0, 0, 1, 1).deleteCells(Dimension.COLUMNS)],
  ["cells cut and pasted, or dragged", () => move({})],
  [
    "cells cut and pasted on another sheet",
    () => {
      const other = open.engine.book.insertSheet("Other");
      return move({ toSubUnitId: other.getSheetId() });
    },
  ],
  [
    "rows in another order",
    () => {
      const range = { startRow: 0, endRow: 1, startColumn: 0, endColumn: 4 };
      const order = { 0: 1, 1: 0 };
      return open.engine.api.executeCommand(ReorderRangeCommand.id, { unitId: open.engine.book.getId(), subUnitId: idNamed("Kiln"), range, order });
    },
  ],
];

describe("what cannot be changed in the file", () => {
  test.each<[string, () => unknown, string]>([
    ...MOVES.map(([what, move]): [string, () => unknown, string] => [what, move, MOVED]),
    [
      "cells merged",
      () => void sheetNamed("Kiln").getRange("A1:B2").merge(),
      'Merged cells, rows that stay in view or rules for entries of sheet "Kiln" were changed.',
    ],
    [
      "rows that stay in view",
      () => void sheetNamed("Kiln").setFrozenRows(1),
      'Merged cells, rows that stay in view or rules for entries of sheet "Kiln" were changed.',
    ],
    ["a name given", () => void open.engine.book.insertDefinedName("kiln_rate", "1.5"), "Defined names were changed."],
  ])("is said: %s", async (_what, change, because) => {
    const file = await opened(small());
    await change();
    await open.settled();
    expect(await file.saved()).toEqual({ because });
  });

  test.each(MOVES)("is so no longer once it is taken back, and again once it is done again: %s", async (_what, moves) => {
    const content = small();
    const file = await opened(content);
    open.engine.book.setActiveSheet(sheetNamed("Kiln"));
    await moves();
    await open.settled();
    expect([await file.saved(), file.origins().moved]).toEqual([{ because: MOVED }, ["Kiln"]]);
    open.engine.book.undo();
    await open.settled();
    expect(file.origins().moved).toEqual([]);
    if (open.engine.book.getSheets().length === 1)
      expect(await partsDiffering(content, contentOf(await file.saved()))).toEqual({ changed: [], added: [], gone: [] });
    open.engine.book.redo();
    await open.settled();
    expect(await file.saved()).toEqual({ because: MOVED });
  });

  test("what was moved before the file was saved anew and is taken back afterwards is moved in the file, even if something else is moved then", async () => {
    let file = await opened(small());
    sheetNamed("Kiln").insertRows(0, 1);
    await open.settled();
    file = file.after(await saveXlsx(open.engine), []);
    expect(contentOf(await file.saved()).length).toBeGreaterThan(0);
    open.engine.book.undo();
    await open.settled();
    expect(await file.saved()).toEqual({ because: MOVED });
    open.engine.book.redo();
    await open.settled();
    expect(file.origins().moved).toEqual([]);
    open.engine.book.undo();
    sheetNamed("Kiln").insertRows(4, 1);
    await open.settled();
    expect(await file.saved()).toEqual({ because: MOVED });
    open.engine.book.undo();
    expect(file.origins().moved).toEqual(["Kiln"]);
  });

  test("a heading of a table, of which formulas name the column, is said", async () => {
    const file = await opened(fileNamed("beside.xlsx"));
    await open.type("Kiln runs", "A1", "another");
    expect(await file.saved()).toEqual({
      because: expect.stringMatching(
        /^A1 on sheet "Kiln runs" is a heading of the table ".*", by which formulas name its column, and cannot be changed in the file\. Change it in the program the file comes from\.$/,
      ) as unknown,
    });
  });

  test("what it would lack is known from its opening, and nothing once it was written anew", async () => {
    const file = await opened(fileNamed("beside.xlsx"));
    expect(file.notShown).toContain("2 charts (Kiln runs)");
    expect(file.notShown.at(-1)).toBe("looks not known here, such as underlining and the colours of a theme, and settings of pages");
    expect(file.after(small(), []).notShown).toEqual([]);
  });
});

test("a file saved in place reads for another program as what the grid shows", async () => {
  const file = await opened(fileNamed("openpyxl.xlsx"));
  await open.type("Kiln runs", "B3", 26.5);
  const bytes = contentOf(await file.saved());
  const read = new FileWorkbook();
  await read.xlsx.load(bytes.buffer);
  const there = read.getWorksheet("Kiln runs");
  // The program that made the file wrote no values beside its formulas; those that follow from what was typed have theirs now.
  const { rows } = await open.workbook.read("Kiln runs", "F3:H3");
  for (const { cell, value } of rows.flat()) if (cell !== "G3") expect([cell, there?.getCell(cell).result]).toEqual([cell, value]);
  expect((await partsIn(bytes)).size).toBe((await partsIn(fileNamed("openpyxl.xlsx"))).size);
});
