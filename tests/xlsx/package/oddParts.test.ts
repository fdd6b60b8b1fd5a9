import { TextReader, Uint8ArrayWriter, ZipWriter } from "@zip.js/zip.js";
import JSZip from "jszip";
import { WorkbookProblem } from "../../../src/workbook/Workbook";
import type { CellChange, FileValue } from "../../../src/xlsx/package/cells/CellChange";
import { WorkbookPackage } from "../../../src/xlsx/package/WorkbookPackage";
import { packageOf, partsOf, zipOf, type SmallWorkbook } from "../../workbench/xlsx/packageOf";
import { partsDiffering, textOf } from "./partsIn";

const SHEET = "xl/worksheets/sheet1.xml";

const value = (cell: string, put: FileValue): CellChange => ({ cell, content: { kind: "value", value: put } });
const recalculated = (cell: string, put: FileValue): CellChange => ({ cell, content: { kind: "recalculated", value: put } });
const formula = (cell: string, text: string, put: FileValue = null): CellChange => ({
  cell,
  content: { kind: "formula", formula: text, value: put },
});

async function changed(workbook: SmallWorkbook, ...changes: CellChange[]): Promise<Uint8Array<ArrayBuffer>> {
  const file = await WorkbookPackage.of(packageOf(workbook));
  await file.changeCells("Kiln", changes);
  return file.bytes();
}

/** The sheet's rows after the changes. */
async function rows(sheetData: string, ...changes: CellChange[]): Promise<string> {
  const markup = await textOf(await changed({ sheets: { Kiln: sheetData } }, ...changes), SHEET);
  return markup.replace("<worksheet><sheetData>", "").replace("</sheetData></worksheet>", "");
}

describe("a changed cell", () => {
  test.each<[string, string, CellChange[], string]>([
    [
      "keeps its look and says what it holds",
      '<row r="1"><c r="A1" s="3" t="s"><v>0</v></c></row>',
      [value("A1", 5)],
      '<row r="1"><c r="A1" s="3"><v>5</v></c></row>',
    ],
    ["may be blank", '<row r="1"><c r="A1" s="3"><f>1+1</f><v>2</v></c></row>', [value("A1", null)], '<row r="1"><c r="A1" s="3"/></row>'],
    [
      "keeps its formula beside another value",
      '<row r="1"><c r="A1"><f>1+1</f><v>2</v></c></row>',
      [recalculated("A1", "x")],
      '<row r="1"><c r="A1" t="str"><f>1+1</f><v>x</v></c></row>',
    ],
    [
      "gets the value it did not have",
      '<row r="1"><c r="A1" t="e"><f>1+1</f></c></row>',
      [recalculated("A1", 2)],
      '<row r="1"><c r="A1"><f>1+1</f><v>2</v></c></row>',
    ],
    [
      "has text in itself, with its spaces",
      '<row r="1"><c r="A1"><v>2</v></c></row>',
      [value("A1", " a&b\r")],
      '<row r="1"><c r="A1" t="inlineStr"><is><t xml:space="preserve"> a&amp;b_x000D_</t></is></c></row>',
    ],
    [
      "loses the picture it showed, and what stands beside it stays",
      '<row r="1"><c vm="1" r="A1" t="e"><v>#VALUE!</v></c><c r="B1"><v>1</v></c></row>',
      [value("A1", 2)],
      '<row r="1"><c r="A1"><v>2</v></c><c r="B1"><v>1</v></c></row>',
    ],
    [
      "need not say where it stands",
      "<row><c><v>1</v></c><c s='2'><v>2</v></c></row><row><c><v>3</v></c></row>",
      [value("B1", 7), value("A2", 8)],
      "<row><c><v>1</v></c><c s='2'><v>7</v></c></row><row><c><v>8</v></c></row>",
    ],
    [
      "is put between the others",
      '<row r="2"><c r="A2"/><c r="D2"/></row>',
      [value("C2", 7)],
      '<row r="2"><c r="A2"/><c r="C2"><v>7</v></c><c r="D2"/></row>',
    ],
    [
      "is put behind and before the others",
      '<row r="2" x="y"><c r="B2"/></row>',
      [value("C2", 7), value("A2", 6)],
      '<row r="2" x="y"><c r="A2"><v>6</v></c><c r="B2"/><c r="C2"><v>7</v></c></row>',
    ],
    [
      "is put into an empty row, and into rows that are not there",
      '<row r="2" ht="9"/>',
      [value("A1", 1), value("A2", 2), value("A3", 3)],
      '<row r="1"><c r="A1"><v>1</v></c></row><row r="2" ht="9"><c r="A2"><v>2</v></c></row><row r="3"><c r="A3"><v>3</v></c></row>',
    ],
    [
      "makes its row say how far it reaches",
      '<row r="2" spans="2:3" x14ac:dyDescent="0.25" xmlns:x14ac="urn:a"><c r="B2"/></row>',
      [value("E2", 7)],
      '<row r="2" spans="2:5" x14ac:dyDescent="0.25" xmlns:x14ac="urn:a"><c r="B2"/><c r="E2"><v>7</v></c></row>',
    ],
    ["that is blank where nothing stands changes nothing", '<row r="2"/>', [value("A1", null), value("B2", null)], '<row r="2"/>'],
    [
      "keeps what later versions put into it",
      '<row r="2"><c r="A2"><v>1</v><extLst><ext uri="u"/></extLst></c></row>',
      [value("A2", 2)],
      '<row r="2"><c r="A2"><v>2</v><extLst><ext uri="u"/></extLst></c></row>',
    ],
    [
      "gives way with its pronunciation",
      '<row r="2"><c r="A2" t="inlineStr" ph="1"><is><t>a</t><rPh sb="0" eb="1"><t>b</t></rPh></is></c></row>',
      [value("A2", 2)],
      '<row r="2"><c r="A2" ph="1"><v>2</v></c></row>',
    ],
    [
      "shows what is no number as an error",
      '<row r="2"/>',
      [value("A2", NaN), value("B2", -0)],
      '<row r="2"><c r="A2" t="e"><v>#NUM!</v></c><c r="B2"><v>0</v></c></row>',
    ],
  ])("%s", async (_what, before, changes, after) => {
    expect(await rows(before, ...changes)).toBe(after);
  });

  test("stands under the sheet's own prefix, in a sheet that had no cells too", async () => {
    const sheet = '<x:worksheet xmlns:x="urn:m"><x:sheetData/></x:worksheet>';
    const bytes = await changed({ sheets: { Kiln: "" }, further: { [SHEET]: sheet } }, formula("B2", "1<2", true));
    expect(await textOf(bytes, SHEET)).toBe(
      '<x:worksheet xmlns:x="urn:m"><x:sheetData><x:row r="2"><x:c r="B2" t="b"><x:f>1&lt;2</x:f><x:v>1</x:v></x:c></x:row></x:sheetData></x:worksheet>',
    );
  });

  test("makes the sheet say how far it reaches, and no less than it said", async () => {
    const sheet = '<worksheet><dimension ref="B2:C3"/><sheetData><row r="2"><c r="B2"/></row></sheetData></worksheet>';
    const said = async (...changes: CellChange[]): Promise<string | undefined> =>
      /ref="([^"]*)"/.exec(await textOf(await changed({ sheets: { Kiln: sheet } }, ...changes), SHEET))?.[1];
    expect([await said(value("B2", 1)), await said(value("E9", 1)), await said(value("A1", 1)), await said(value("E9", null))]).toEqual([
      "B2:C3",
      "B2:E9",
      "A1:C3",
      "B2:C3",
    ]);
  });

  test.each(["utf-16le", "utf-16be"] as const)("stands in a part of two bytes a letter: %s", async (encoding) => {
    const markup = '\uFEFF<?xml version="1.0" encoding="UTF-16"?><worksheet><sheetData><row r="1"><c r="A1"/></row></sheetData></worksheet>';
    const wide = Buffer.from(markup, "utf16le");
    const bytes = await changed(
      { sheets: { Kiln: "" }, further: { [SHEET]: new Uint8Array(encoding === "utf-16le" ? wide : wide.swap16()) } },
      value("A1", "°"),
    );
    const file = await WorkbookPackage.of(bytes);
    const found: FileValue[] = [];
    // Reading such a part is for the first of the two orders alone, so what was written is looked at itself.
    expect(await file.parts.text(SHEET)).toBe(markup.replace('<c r="A1"/>', '<c r="A1" t="inlineStr"><is><t>°</t></is></c>'));
    if (encoding === "utf-16le") {
      await file.readCells("Kiln", (cell) => found.push(cell.value));
      expect(found).toEqual(["°"]);
    }
  });
});

describe("formulas that one cell holds for several", () => {
  const GROUP =
    '<row r="1"><c r="A1"><v>1</v></c><c r="B1"><f t="shared" ref="B1:B4" si="0">A1*2+$A$1</f><v>3</v></c></row>' +
    '<row r="2"><c r="B2"><f t="shared" si="0"/><v>4</v></c></row><row r="3"><c r="B3"><f t="shared" si="0"/><v>5</v></c></row>' +
    '<row r="4"><c r="B4" s="1"><f t="shared" si="0"></f><v>6</v></c></row>';

  test.each<[string, CellChange[], string[]]>([
    ["another of them is changed: the others stay", [value("B3", 9)], ['<c r="B3"><v>9</v></c>']],
    ["the first is changed: the next holds it", [value("B1", 9)], ['<c r="B1"><v>9</v></c>', '<f t="shared" si="0" ref="B2:B4">A2*2+$A$1</f>']],
    ["the first and the next are changed", [value("B1", 9), value("B2", 9)], ['<f t="shared" si="0" ref="B3:B4">A3*2+$A$1</f>']],
    [
      "the first gets another formula, and the next another value",
      [formula("B1", "7"), recalculated("B2", 8)],
      ['<c r="B2"><f t="shared" si="0" ref="B2:B4">A2*2+$A$1</f><v>8</v></c>'],
    ],
    ["all are changed: the formula goes", ["B1", "B2", "B3", "B4"].map((cell) => value(cell, 1)), ['<c r="B1"><v>1</v></c>']],
    ["the first is calculated anew: nobody takes over", [recalculated("B1", 8)], ['<f t="shared" ref="B1:B4" si="0">A1*2+$A$1</f><v>8</v>']],
  ])("where %s", async (_what, changes, expected) => {
    const after = await rows(GROUP, ...changes);
    for (const one of expected) expect(after).toContain(one);
    const untouched = ["B1", "B2", "B3", "B4"].filter((cell) => !changes.some((change) => change.cell === cell));
    const file = await WorkbookPackage.of(packageOf({ sheets: { Kiln: after } }));
    const formulas = new Map<string, string>();
    await file.readCells("Kiln", (cell) => formulas.set(cell.cell, cell.formula));
    for (const cell of untouched) expect(formulas.get(cell)).toBe(`A${cell.slice(1)}*2+$A$1`);
  });

  test("a reference that leaves the sheet at the next cell makes each of them hold its own", async () => {
    const group =
      '<row r="2"><c r="A2"><f t="shared" ref="A1:C2" si="4">B1</f></c><c r="C2"><f t="shared" si="4"/></c></row>' +
      '<row r="3"><c r="A3"><f t="shared" si="4"/></c></row>';
    const before = group.replace('<row r="2">', '<row r="1"><c r="B1"><f t="shared" si="4"/></c></row><row r="2">');
    // B1 stands before the cell that holds the formula, so it is no heir of it; C2 and A3 are.
    expect(await rows(before, value("A2", 1))).toContain('<c r="C2"><f t="shared" si="4" ref="A2:C3">D1</f></c>');
    const upward = '<row r="2"><c r="A2"><f t="shared" ref="A2:A3" si="1">A1+A2</f></c><c r="B2"><f t="shared" si="1"/></c></row>';
    expect(await rows(upward, value("A2", 1))).toContain('<f t="shared" si="1" ref="B2">B1+B2</f>');
    const leaving =
      '<row r="5"><c r="B5"><f t="shared" ref="A5:B9" si="1">A1</f></c></row><row r="6"><c r="A6"><f t="shared" si="1"/></c><c r="B6"><f t="shared" si="1"/></c></row>';
    const after = await rows(leaving, value("B5", 1));
    expect(after).toContain('<c r="A6"><f>#REF!</f></c><c r="B6"><f>A2</f></c>');
  });

  test("a name that looks like a cell stays itself", async () => {
    const workbook = {
      sheets: { Kiln: GROUP.replace("A1*2", "TIN1*A1") },
      after: '<definedNames><definedName name="TIN1">5</definedName></definedNames>',
    };
    expect(await textOf(await changed(workbook, value("B1", 9)), SHEET)).toContain("TIN1*A2+$A$1</f>");
  });
});

describe("formulas that fill an area", () => {
  const ARRAY =
    '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A3">B1:B3*2</f><v>2</v></c></row><row r="2"><c r="A2"><v>4</v></c></row><row r="3"><c r="A3"><v>6</v></c></row>';

  test("become values with their first cell", async () => {
    expect(await rows(ARRAY, value("A1", 2))).toBe(ARRAY.replace('<c r="A1" cm="1"><f t="array" ref="A1:A3">B1:B3*2</f>', '<c r="A1">'));
  });

  test("keep their mark where they are calculated anew, with all they fill", async () => {
    expect(await rows(ARRAY, recalculated("A1", 3), recalculated("A2", 5))).toBe(
      ARRAY.replace("<v>2</v>", "<v>3</v>").replace("<v>4</v>", "<v>5</v>"),
    );
  });

  test("are not changed in part, and neither is a what-if table", async () => {
    await expect(rows(ARRAY, value("A2", 1))).rejects.toThrow(
      new WorkbookProblem(
        'A2 on sheet "Kiln" is filled by the array formula of A1:A3, of which no part can be changed alone. Change the formula in its first cell, or all of A1:A3.',
      ),
    );
    const table = '<row r="1"><c r="B1"><f t="dataTable" ref="B1:B2" r1="A1"/><v>2</v></c></row><row r="2"><c r="B2"><v>4</v></c></row>';
    for (const cell of ["B1", "B2"])
      await expect(rows(table, value(cell, 1))).rejects.toThrow(
        new WorkbookProblem(
          `${cell} on sheet "Kiln" belongs to the what-if data table B1:B2, whose cells cannot be changed. Take the table out in the program the file comes from.`,
        ),
      );
    expect(await rows(table, recalculated("B2", 5))).toBe(table.replace("<v>4</v>", "<v>5</v>"));
  });

  test("of one fixed size and of the size of the answer are written as what they are", async () => {
    const workbook = { sheets: { Kiln: '<row r="1"/>' } };
    const array = { kind: "formula", formula: "B1:B3*2", value: 2, array: "A1:A3" } as const;
    const bytes = await changed(workbook, { cell: "A1", content: array }, { cell: "C1", content: { ...array, array: "C1:C3", spills: true } });
    expect(await textOf(bytes, SHEET)).toContain(
      '<c r="A1"><f t="array" ref="A1:A3">B1:B3*2</f><v>2</v></c><c r="C1" cm="1"><f t="array" ref="C1:C3">B1:B3*2</f><v>2</v></c>',
    );
    expect(await partsDiffering(packageOf(workbook), bytes)).toMatchObject({ added: ["xl/metadata.xml"] });
    expect(await textOf(bytes, "[Content_Types].xml")).toContain('PartName="/xl/metadata.xml"');
    expect(await textOf(bytes, "xl/_rels/workbook.xml.rels")).toMatch(/\/sheetMetadata" Target="\/xl\/metadata.xml"/);
    // The mark is there now, and used again.
    const file = await WorkbookPackage.of(bytes);
    await file.changeCells("Kiln", [{ cell: "E1", content: { ...array, array: "E1:E3", spills: true } }]);
    const again = await file.bytes();
    expect(await textOf(again, SHEET)).toContain('<c r="E1" cm="1">');
    expect((await partsDiffering(bytes, again)).changed).toEqual([SHEET]);
  });

  test("get their mark beside other marks of the file", async () => {
    const metadata =
      '<metadata xmlns="m"><metadataTypes count="1"><metadataType name="XLRICHVALUE"/></metadataTypes><futureMetadata name="XLRICHVALUE" count="1"><bk/></futureMetadata>' +
      '<valueMetadata count="1"><bk><rc t="1" v="0"/></bk></valueMetadata></metadata>';
    const rels = String(partsOf({ sheets: { Kiln: "" } })["xl/_rels/workbook.xml.rels"]).replace(
      "</Relationships>",
      '<Relationship Id="m" Type="urn:x/sheetMetadata" Target="meta.xml"/></Relationships>',
    );
    const workbook = { sheets: { Kiln: '<row r="1"/>' }, further: { "xl/meta.xml": metadata, "xl/_rels/workbook.xml.rels": rels } };
    const bytes = await changed(workbook, { cell: "A1", content: { kind: "formula", formula: "B1:B3", value: 1, array: "A1:A3", spills: true } });
    const after = await textOf(bytes, "xl/meta.xml");
    expect(
      after.replace(/<futureMetadata name="XLDAPR".*?<\/futureMetadata>/, "[future]").replace(/<metadataType name="XLDAPR"[^>]*>/, "[type]"),
    ).toBe(
      '<metadata xmlns="m"><metadataTypes count="2"><metadataType name="XLRICHVALUE"/>[type]</metadataTypes><futureMetadata name="XLRICHVALUE" count="1"><bk/></futureMetadata>' +
        '[future]<cellMetadata count="1"><bk><rc t="2" v="0"/></bk></cellMetadata><valueMetadata count="1"><bk><rc t="1" v="0"/></bk></valueMetadata></metadata>',
    );
  });
});

describe("the order of calculation", () => {
  const rels = String(partsOf({ sheets: { Kiln: "" } })["xl/_rels/workbook.xml.rels"]).replace(
    "</Relationships>",
    '<Relationship Id="c" Type="urn:x/calcChain" Target="/xl/calcChain.xml"/></Relationships>',
  );
  const workbook: SmallWorkbook = {
    sheets: { Kiln: '<row r="1"><c r="A1"><f>1</f><v>1</v></c><c r="B1"><v>2</v></c></row>' },
    further: {
      "xl/calcChain.xml": '<calcChain><c r="A1" i="1"/></calcChain>',
      "xl/_rels/workbook.xml.rels": rels,
      "[Content_Types].xml":
        '<Types><Override PartName="/xl/calcChain.xml" ContentType="c"/><Override PartName="/xl/other.xml" ContentType="o"/></Types>',
    },
  };

  test.each<[string, CellChange, boolean]>([
    ["a formula goes", value("A1", 1), true],
    ["a formula comes", formula("C1", "2"), true],
    ["a formula is another one", formula("A1", "2"), true],
    ["a value changes", value("B1", 3), false],
    ["a formula gives another value", recalculated("A1", 3), false],
  ])("is taken out where %s, with what names it", async (_what, change, goes) => {
    const bytes = await changed(workbook, change);
    const { gone, changed: differing } = await partsDiffering(packageOf(workbook), bytes);
    expect(gone).toEqual(goes ? ["xl/calcChain.xml"] : []);
    expect(differing).toEqual(goes ? ["[Content_Types].xml", "xl/_rels/workbook.xml.rels", SHEET] : [SHEET]);
    if (goes) {
      expect(await textOf(bytes, "[Content_Types].xml")).toBe('<Types><Override PartName="/xl/other.xml" ContentType="o"/></Types>');
      expect(await textOf(bytes, "xl/_rels/workbook.xml.rels")).not.toContain("calcChain");
    }
  });
});

describe("what cannot be changed in place", () => {
  test.each<[string, SmallWorkbook, CellChange[], string]>([
    [
      "a sheet that is not there",
      { sheets: { Tins: "" } },
      [value("A1", 1)],
      'This workbook has no sheet "Kiln" with cells, so nothing was changed.',
    ],
    [
      "a cell given two changes",
      { sheets: { Kiln: "" } },
      [value("B7", 1), value("$B$7", 2)],
      'B7 on sheet "Kiln" is to be changed twice at once, so nothing was changed. Give each cell one change.',
    ],
    ["an area", { sheets: { Kiln: "" } }, [value("A1:B2", 1)], '"A1:B2" is not a cell or a range of cells. Give one such as B7 or A1:C3.'],
    [
      "cells in no order",
      { sheets: { Kiln: '<row r="1"><c r="B1"/><c r="A1"/></row>' } },
      [value("A1", 1)],
      'The cells of sheet "Kiln" are not in order in the file: A1 comes too late. Nothing was changed. Open the file in a spreadsheet program, save it as .xlsx again and use that.',
    ],
    [
      "rows in no order",
      { sheets: { Kiln: '<row r="3"/><row r="2"/>' } },
      [value("A1", 1)],
      'The cells of sheet "Kiln" are not in order in the file: row 2 comes too late. Nothing was changed. Open the file in a spreadsheet program, save it as .xlsx again and use that.',
    ],
    [
      "a part of other letters",
      { sheets: { Kiln: '<?xml version="1.0" encoding="windows-1252"?><worksheet><sheetData/></worksheet>' } },
      [value("A1", 1)],
      'The part "xl/worksheets/sheet1.xml" of this workbook is written in letters that are neither UTF-8 nor UTF-16, so nothing was changed. Open the file in a spreadsheet program, save it as .xlsx again and use that.',
    ],
    [
      "bytes that are no letters",
      { sheets: { Kiln: "" }, further: { [SHEET]: new Uint8Array([0x3c, 0x61, 0x3e, 0xff, 0x3c, 0x2f, 0x61, 0x3e]) } },
      [value("A1", 1)],
      'The part "xl/worksheets/sheet1.xml" of this workbook is written in letters that are neither UTF-8 nor UTF-16, so nothing was changed. Open the file in a spreadsheet program, save it as .xlsx again and use that.',
    ],
    [
      "text that no cell can hold",
      { sheets: { Kiln: "" } },
      [value("A1", "x".repeat(32_768))],
      "The text of a cell has 32768 characters and the sheet can hold 32767. Shorten it.",
    ],
    [
      "a formula that no cell can hold",
      { sheets: { Kiln: "" } },
      [formula("A1", "1".repeat(8193))],
      "The cell formula has 8193 characters and the sheet can hold 8192. Shorten it.",
    ],
  ])("is said: %s", async (_what, workbook, changes, sentence) => {
    const before = packageOf(workbook);
    const file = await WorkbookPackage.of(before);
    await expect(file.changeCells("Kiln", changes)).rejects.toThrow(new WorkbookProblem(sentence));
    expect(await partsDiffering(before, await file.bytes())).toEqual({ changed: [], added: [], gone: [] });
  });
});

describe("a file of another make", () => {
  test("with macros keeps them and its kind", async () => {
    const rels = String(partsOf({ sheets: { Kiln: "" } })["xl/_rels/workbook.xml.rels"]).replace(
      "</Relationships>",
      '<Relationship Id="v" Type="http://schemas.microsoft.com/office/2006/relationships/vbaProject" Target="vbaProject.bin"/></Relationships>',
    );
    const workbook = { sheets: { Kiln: "" }, further: { "xl/vbaProject.bin": new Uint8Array([1, 2, 255, 0]), "xl/_rels/workbook.xml.rels": rels } };
    const bytes = await changed(workbook, value("A1", 1));
    expect((await partsDiffering(packageOf(workbook), bytes)).changed).toEqual([SHEET]);
    expect(await (await WorkbookPackage.of(bytes)).hasMacros()).toBe(true);
  });

  test("that counts from 1904 is given and gives days as it counts them", async () => {
    const file = await WorkbookPackage.of(
      packageOf({ sheets: { Kiln: '<row r="1"><c r="A1"><v>100</v></c></row>' }, before: '<workbookPr date1904="1"/>' }),
    );
    expect(await file.countsFrom1904()).toBe(true);
    await file.changeCells("Kiln", [value("A2", 44_000.5)]);
    const found: FileValue[] = [];
    await file.readCells("Kiln", ({ value: held }) => found.push(held));
    expect(found).toEqual([100, 44_000.5]);
  });

  test("with sizes behind its parts, with parts that are not packed, and in the larger kind of archive is read and written", async () => {
    const parts = partsOf({ sheets: { Kiln: '<row r="1"><c r="A1"><v>1</v></c></row>' } });
    const streamed = new JSZip();
    const large = new ZipWriter(new Uint8ArrayWriter(), { zip64: true, level: 0, useWebWorkers: false });
    for (const [name, content] of Object.entries(parts)) {
      streamed.file(name, content);
      await large.add(name, new TextReader(String(content)));
    }
    const archives = [await streamed.generateAsync({ type: "uint8array", streamFiles: true, compression: "DEFLATE" }), await large.close()];
    for (const archive of archives) {
      const file = await WorkbookPackage.of(new Uint8Array(archive));
      await file.changeCells("Kiln", [value("A1", 2)]);
      const bytes = await file.bytes();
      expect(await partsDiffering(archive, bytes)).toEqual({ changed: [SHEET], added: [], gone: [] });
      expect(await textOf(bytes, SHEET)).toContain('<c r="A1"><v>2</v></c>');
    }
  });

  test("with names of parts in capitals is read and written", async () => {
    const { "xl/worksheets/sheet1.xml": sheet = "", ...others } = partsOf({ sheets: { Kiln: '<row r="1"><c r="A1"><v>1</v></c></row>' } });
    const capital = zipOf({ ...others, "XL/Worksheets/SHEET1.XML": sheet });
    const file = await WorkbookPackage.of(capital);
    await file.changeCells("Kiln", [value("A1", 2)]);
    expect(await partsDiffering(capital, await file.bytes())).toEqual({ changed: ["XL/Worksheets/SHEET1.XML"], added: [], gone: [] });
  });
});

test("a file without looks gets them where other programs look for them", async () => {
  const bare = packageOf({ sheets: { Kiln: "<row><c><v>1</v></c></row>" } });
  const file = await WorkbookPackage.of(bare);
  await file.addLooks([[0, { format: "0.00" }]]);
  expect((await partsDiffering(bare, await file.bytes())).added).toEqual(["xl/styles.xml"]);
});
