// Files written by hand, each for one thing that programs write in more than one way.
import { openXlsx } from "../../../src/workbench/xlsx/openXlsx";
import { saveXlsx } from "../../../src/workbench/xlsx/saveXlsx";
import { namesIn } from "../../../src/workbook/grid/writing/definedNames";
import { replaceSheets } from "../../../src/workbook/grid/writing/GridSheet";
import { heldSheets } from "../../../src/workbook/grid/reading/heldSheets";
import type { CellReading } from "../../../src/workbook/Workbook";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../headlessWorkbook";
import { packageOf, zipOf } from "./packageOf";

jest.setTimeout(60_000);

let open: HeadlessWorkbook;
beforeEach(async () => {
  open = await openHeadlessWorkbook();
});
afterEach(() => open.close());

const sheet = "Kiln";
const read = async (range: string): Promise<CellReading[]> => (await open.workbook.read(sheet, range)).rows.flat();
const values = async (range: string): Promise<unknown[]> => (await read(range)).map(({ value, error }) => (error === "" ? value : { error }));
const formulas = async (range: string): Promise<string[]> => (await read(range)).map(({ formula }) => formula);
const opened = (xml: string, more: Partial<Parameters<typeof packageOf>[0]> = {}): Promise<readonly string[]> =>
  openXlsx(open.engine, packageOf({ sheets: { [sheet]: xml }, ...more }));
const name = (called: string, meaning: string, local = ""): string => `<definedName name="${called}"${local}>${meaning}</definedName>`;

test("values of every type are what the file says, and text that looks like a number, a formula or an error is text", async () => {
  const shared = `<sst><si><t>Shells</t></si><si><r><t>two </t></r><r><rPr><b/></rPr><t xml:space="preserve">looks</t></r><rPh sb="0" eb="1"><t>x</t></rPh></si></sst>`;
  expect(
    await opened(
      `<row r="2"><c r="A2"><v>1.5E-3</v></c><c t="b"><v>1</v></c><c t="b"><v>0</v></c><c t="e"><v>#DIV/0!</v></c><c t="str"><v>#N/A</v></c></row>
       <row><c t="s"><v>0</v></c><c t="s"><v>1</v></c><c t="inlineStr"><is><t>=1+1</t></is></c><c t="d"><v>2026-01-15T09:45:00</v></c><c t="d"><v>09:45:00</v></c></row>
       <row><c t="str"><v>a_x000D_b_x005F_x0041_</v></c><c t="str"><v>007</v></c><c t="str"><v>12 %</v></c><c r="E4"><f>ISERROR(D2)</f></c><c><f>SUM(A2,B2)</f></c></row>`,
      { further: { "xl/sharedStrings.xml": shared } },
    ),
  ).toEqual(["1 text with several looks in one cell, shown in one (Kiln): kept on saving"]);
  expect(await values("A2:E2")).toEqual([0.0015, true, false, { error: "#DIV/0!" }, "#N/A"]);
  expect(await values("A3:E3")).toEqual(["Shells", "two looks", "=1+1", 46_037.406_25, 0.406_25]);
  expect(await values("A4:F4")).toEqual(["a\rb_x0041_", "007", "12 %", null, true, 0.0015]);
  expect((await openXlsx(open.engine, await saveXlsx(open.engine))).length).toBe(0);
  expect(await values("A4:C4")).toEqual(["a\rb_x0041_", "007", "12 %"]);
  expect(await values("D2:E2")).toEqual([{ error: "#DIV/0!" }, "#N/A"]);
});

test("names are kept, those that read like cells or functions too, and stay where a formula is filled down", async () => {
  const after = `<definedNames>${name("Tin1", "Kiln!$A$1")}${name("rate", "1.5")}${name("both", "SUM(Kiln!$A$1:$A$2)")}${name("here", "Kiln!$A$2", ' localSheetId="0"')}${name("_xlnm.Print_Area", "Kiln!$A$1:$B$2", ' localSheetId="0"')}</definedNames>`;
  const xml = `<row r="1"><c r="A1"><v>10</v></c><c r="B1"><f t="shared" ref="B1:B2" si="3">Tin1+A1*rate</f></c></row>
    <row r="2"><c r="A2"><v>20</v></c><c r="B2"><f t="shared" si="3"/></c><c r="C2"><f>both+here</f></c></row>`;
  expect(await opened(xml, { after })).toEqual([]);
  expect(await formulas("B1:B2")).toEqual(["=Tin1+A1*rate", "=Tin1+A2*rate"]);
  expect(await values("B1:C2")).toEqual([25, null, 40, 50]);
  expect(await openXlsx(open.engine, await saveXlsx(open.engine))).toEqual([]);
  expect(await values("B1:C2")).toEqual([25, null, 40, 50]);
  // The next file has no names, and the old ones are gone.
  await opened('<row r="1"><c r="A1"><f>both</f></c></row>');
  expect(await values("A1")).toEqual([{ error: "#NAME?" }]);
});

test("a filled-down formula without its first cell keeps its value, and one with a text of its own has that", async () => {
  const xml = `<row r="1"><c r="A1"><f t="shared" si="0"/><v>7</v></c><c r="B1"><f t="shared" ref="B1:B3" si="1">C1&amp;"SO2"</f></c><c r="C1" t="str"><v>x</v></c></row>
    <row r="2"><c r="B2"><f t="shared" si="1">C1&amp;"own"</f></c></row><row r="3"><c r="B3"><f t="shared" si="1"/></c></row>`;
  expect(await opened(xml)).toEqual([
    "1 cell formula that is filled from another one the file does not have, shown as the value it had (Kiln): kept on saving",
  ]);
  expect(await values("A1")).toEqual([7]);
  expect(await formulas("B1:B3")).toEqual(['=C1&"SO2"', '=C1&"own"', '=C3&"SO2"']);
});

test("array formulas fill their areas, and their other cells are not typed in", async () => {
  const xml = `<row r="1"><c r="A1"><v>1</v></c><c r="B1"><f t="array" ref="B1:B2">A1:A2*2</f><v>2</v></c></row><row r="2"><c r="A2"><v>4</v></c><c r="B2"><v>8</v></c></row>`;
  expect(await opened(xml)).toEqual([]);
  expect((await read("B1:B2")).map(({ value, formula, spill }) => [value, formula, spill])).toEqual([
    [2, "=A1:A2*2", "B1:B2"],
    [8, "", ""],
  ]);
});

test("formulas over tables, other workbooks and what-if tables: cells in place of columns, or the value that stands in the file", async () => {
  const table = `<table displayName="Runs" ref="A1:C4" totalsRowCount="1"><tableColumns><tableColumn name="Moist"/><tableColumn name="Dry (g)"/><tableColumn name="Water"/></tableColumns></table>`;
  const cell = (r: string, f: string, v = ""): string => `<c r="${r}"><f>${f}</f>${v === "" ? "" : `<v>${v}</v>`}</c>`;
  const xml = `<row r="2"><c r="A2"><v>5</v></c><c r="B2"><v>3</v></c>${cell("C2", "Runs[[#This Row],[Moist]]-[@[Dry (g)]]")}${cell("E2", "SUM(Runs[Moist])")}${cell("F2", "COUNTA(Runs)")}</row>
    <row r="3"><c r="A3"><v>7</v></c><c r="B3"><v>4</v></c>${cell("E3", "SUM(Runs[[Moist]:[Dry (g)]])")}${cell("F3", "ROWS(Runs[#All])")}${cell("G3", "Runs[[#Totals],[Moist]]")}</row>
    <row r="4"><c r="A4"><v>12</v></c>${cell("E4", "SUM(Other[Moist])", "9")}${cell("F4", "[1]Sheet1!$A$1*2", "18")}${cell("G4", "'[runs 2.xlsx]Kiln'!A1", "4")}<c r="H4"><f t="dataTable" ref="H4:H5" dt2D="0" r1="A2"/><v>6</v></c></row>`;
  const further = {
    "xl/worksheets/_rels/sheet1.xml.rels": `<Relationships><Relationship Id="t" Type="http://purl.oclc.org/ooxml/officeDocument/relationships/table" Target="/xl/tables/table1.xml"/></Relationships>`,
    "xl/tables/table1.xml": table,
  };
  expect(await opened(xml, { further })).toEqual([
    "1 table, shown as plain cells (Kiln): kept on saving",
    "1 cell formula that names a table in a way not known here, shown as the value it had (Kiln): kept on saving",
    "2 cell formulas that read other workbooks, shown as the values they had (Kiln): kept on saving",
    "1 cell of a what-if data table, shown as the value it had (Kiln): kept on saving",
  ]);
  expect(await formulas("C2:F2")).toEqual(["=$A$2-$B$2", "", "=SUM($A$2:$A$3)", "=COUNTA($A$2:$C$3)"]);
  expect(await formulas("E3:G3")).toEqual(["=SUM($A$2:$B$3)", "=ROWS($A$1:$C$4)", "=$A$4"]);
  expect(await values("E3:G4")).toEqual([19, 4, 12, 9, 18, 4]);
  expect(await values("H4")).toEqual([6]);
});

test("cells at both corners of a sheet are two cells: opened, calculated, saved and opened again at once", async () => {
  const xml = `<row r="1"><c r="A1"><v>1</v></c><c r="B1"><f>A1+XFD1048576</f></c></row><row r="1048576"><c r="XFD1048576"><v>2</v></c></row>`;
  const began = performance.now();
  expect(await opened(xml)).toEqual([]);
  expect(await values("A1:B1")).toEqual([1, 3]);
  expect(await values("XFD1048576")).toEqual([2]);
  const saved = await saveXlsx(open.engine);
  expect(saved.length).toBeLessThan(20_000);
  expect(await openXlsx(open.engine, saved)).toEqual([]);
  expect(await values("XFD1048576")).toEqual([2]);
  await expect(open.workbook.readUsed(sheet)).rejects.toThrow("That is more than the workbook takes at once. Choose fewer rows and try again.");
  const whole = await open.workbook.readInputs({ sheet, cell: "B1" }, [{ sheet, range: "A:A", spill: false }]);
  expect(whole.ranges[0]).toHaveLength(1);
  // About 4 s on a busy machine; the rectangle between the corners would never end.
  expect(performance.now() - began).toBeLessThan(30_000);
});

test("values under merged cells are kept, counted and told, saved with the cells still merged, and a merged area as large as a sheet comes apart", async () => {
  const rows = `<row r="1"><c r="A1"><v>25</v></c><c r="B1"><v>5</v></c></row><row r="3"><c r="A3"><v>1</v></c></row><row r="4"><c r="B4"><f>SUM(A1:B1)</f></c></row>`;
  const merged = (...refs: readonly string[]): string =>
    `<worksheet><sheetData>${rows}</sheetData><mergeCells>${refs.map((ref) => `<mergeCell ref="${ref}"/>`).join("")}</mergeCells></worksheet>`;
  expect(await opened(merged("A1:C1"))).toEqual([
    "1 cell holds a value under merged cells, where nobody sees them; sums count them all the same. The first is Kiln!B1.",
  ]);
  expect(await values("B4")).toEqual([30]);
  const mergedNow = (): string[] | undefined => {
    const ranges = open.engine.book.getSheetByName(sheet)?.getMergedRanges();
    return ranges?.map((range) => range.getA1Notation()).sort();
  };
  // The second time the last of the merged cells holds something, the third time all of them do, a cell formula among them.
  for (const refs of [["A1:C1"], ["A1:B1", "A3:B4"], ["A1:B1", "B3:B4", "A3:A5"]]) {
    await opened(merged(...refs));
    await openXlsx(open.engine, await saveXlsx(open.engine));
    expect(await values("A1:B1")).toEqual([25, 5]);
    expect(await formulas("B4")).toEqual(["=SUM(A1:B1)"]);
    expect(mergedNow()).toEqual([...refs].sort());
  }
  expect(await opened(merged("C5:XFD1048576", "A1:XFD4"))).toEqual([
    "1 area of merged cells too large to be shown merged (Kiln): kept on saving",
    "3 cells hold values under merged cells, where nobody sees them; sums count them all the same. The first is Kiln!B1.",
  ]);
  expect((await saveXlsx(open.engine)).length).toBeLessThan(20_000);
});

test("an answer that differs from the one in the file is told with both; one of chance, and one the other program did not know, with care", async () => {
  const cell = (r: string, f: string, v: string, t = "n"): string => `<c r="${r}" t="${t}"><f>${f}</f><v>${v}</v></c>`;
  expect(
    await opened(`<row r="1">${cell("A1", "1+1", "2.0000000001")}${cell("B1", "RETORT.MOLARMASS(&quot;H2O&quot;)", "#NAME?", "e")}</row>`),
  ).toEqual([]);
  const differing =
    "cell formula gives another value here than the program that saved the file wrote down: first Kiln!A1, 3 in the file and 2 here. Do not rely on them here.";
  expect(await opened(`<row r="1">${cell("A1", "1+1", "3")}</row>`)).toEqual([`1 ${differing}`]);
  expect(await opened(`<row r="1">${cell("A1", "1+1", "3")}<c r="B1"><f>TODAY()</f></c></row>`)).toEqual([
    `1 ${differing} This workbook holds functions of the day or of chance (TODAY, NOW, RAND), so some of these may rightly differ.`,
  ]);
  expect(await opened(`<row r="1">${cell("A1", "1/0", "5")}${cell("B1", "&quot;a&quot;", "b", "str")}</row>`)).toEqual([
    "2 cell formulas give another value here than the program that saved the file wrote down: first Kiln!A1, 5 in the file and #DIV/0! here. Do not rely on them here.",
  ]);
});

test("a package with prefixes, backslashes, another folder, two-byte letters and strict addresses is a workbook like any other", async () => {
  const strict = "http://purl.oclc.org/ooxml/officeDocument/relationships";
  const sheetXml = `\ufeff<?xml version="1.0" encoding="UTF-16"?><x:worksheet xmlns:x="m"><x:sheetData><x:row><x:c t="inlineStr"><x:is><x:t>Hütte</x:t></x:is></x:c><x:c><x:f>LEN(A1)</x:f></x:c></x:row></x:sheetData></x:worksheet>`;
  const content = zipOf({
    "[content_types].xml": "<Types/>",
    "_rels\\.rels": `<r:Relationships xmlns:r="p"><r:Relationship Id="w" Type="${strict}/officeDocument" Target="/book/main.xml"/></r:Relationships>`,
    "book/main.xml": `<x:workbook xmlns:x="m" xmlns:q="r"><x:sheets><x:sheet name="Kiln" sheetId="9" q:id="R1"/></x:sheets></x:workbook>`,
    "book/_rels/main.xml.rels": `<Relationships><Relationship Id="R1" Type="${strict}/worksheet" Target="sheets/../sheets/./one.xml"/></Relationships>`,
    "Book/Sheets/One.xml": new Uint8Array(Buffer.from(sheetXml, "utf16le")),
  });
  expect(await openXlsx(open.engine, content)).toEqual([]);
  expect(await values("A1:B1")).toEqual(["Hütte", 5]);
});

test("parts of every other kind are told: pivot tables, macros, controls, small charts in cells, drawings, and kinds that nobody here knows", async () => {
  const type = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/";
  const related = (...kinds: readonly string[]): string =>
    `<Relationships>${kinds.map((kind, index) => `<Relationship Id="r${index}" Type="${type}${kind}" Target="../x/${kind}.xml"/>`).join("")}</Relationships>`;
  const xml = `<worksheet><sheetData><row><c><v>1</v></c></row></sheetData><extLst><ext><x14:sparklineGroups xmlns:x14="s"><x14:sparklineGroup/></x14:sparklineGroups><x14:conditionalFormatting/></ext></extLst></worksheet>`;
  const after = `<definedNames>${name("far", "[1]Sheet1!$A$1")}</definedNames>`;
  const further = {
    "xl/worksheets/_rels/sheet1.xml.rels": related("pivotTable", "ctrlProp", "slicer", "drawing", "printerSettings", "threadedComment", "vmlDrawing"),
    "xl/x/_rels/drawing.xml.rels": related("chartEx", "image"),
  };
  expect(await opened(xml, { after, further })).toEqual([
    "1 chart (Kiln): kept on saving",
    "1 picture (Kiln): kept on saving",
    "1 pivot table, shown as plain cells (Kiln): kept on saving",
    "1 button or other control (Kiln): kept on saving",
    "1 other part (Kiln): kept on saving",
    "1 group of small charts in cells (Kiln): kept on saving",
    "1 rule for colouring cells by their values (Kiln): kept on saving",
    "1 defined name that stands for something not known here, left out: kept on saving",
  ]);
});

test("what is held can be put into another workbook: values, formulas, looks, rules, merged cells and names", async () => {
  const after = `<definedNames>${name("rate", "1.5")}</definedNames>`;
  const xml = `<worksheet><sheetViews><sheetView><pane xSplit="1" ySplit="2" state="frozen"/></sheetView></sheetViews><sheetData><row r="1" ht="30"><c r="A1" s="1"><v>0.5</v></c><c r="B1"><f>A1*rate</f></c></row></sheetData><mergeCells><mergeCell ref="A3:B3"/></mergeCells><dataValidations><dataValidation type="decimal" sqref="A1" promptTitle="Share" prompt="From 0 to 1."><formula1>0</formula1><formula2>1</formula2></dataValidation></dataValidations></worksheet>`;
  const styles = `<styleSheet><fonts><font/><font><b/></font></fonts><cellXfs><xf/><xf fontId="1" numFmtId="9"/></cellXfs></styleSheet>`;
  await opened(xml, { after, further: { "xl/styles.xml": styles } });
  const other = await openHeadlessWorkbook();
  const copy = structuredClone({ sheets: heldSheets(open.engine), names: namesIn(open.engine) });
  // The workbook that it was taken from can take it back as well.
  for (const { engine, workbook } of [other, open]) {
    await replaceSheets(engine, copy.sheets, copy.names);
    const [row] = (await workbook.read(sheet, "A1:B1")).rows;
    expect(row?.map(({ value, shown, formula }) => [value, shown, formula])).toEqual([
      [0.5, "50%", ""],
      [0.75, "0.75", "=A1*rate"],
    ]);
    const there = engine.book.getSheetByName(sheet);
    expect(there?.getRange("A1").getCellStyleData()?.bl).toBe(1);
    expect([there?.getFrozenRows(), there?.getFrozenColumns(), there?.getRowHeight(0)]).toEqual([2, 1, 40]);
    expect(there?.getMergedRanges().map((range) => range.getA1Notation())).toEqual(["A3:B3"]);
    expect(there?.getDataValidations().map(({ rule }) => [rule.prompt, rule.formula1, rule.formula2])).toEqual([["From 0 to 1.", "0", "1"]]);
  }
  other.close();
});

test("a sheet that the grid refuses leaves everything that was open, under its own names", async () => {
  await open.type("Sheet1", "A1", "typed before");
  const insert = jest.spyOn(open.engine.book, "insertSheet");
  insert.mockImplementationOnce(() => {
    throw new Error("no room");
  });
  await expect(opened("")).rejects.toThrow("no room");
  expect(await open.workbook.sheetNames()).toEqual(["Sheet1"]);
  expect((await open.workbook.read("Sheet1", "A1")).rows[0]?.[0]?.value).toBe("typed before");
  insert.mockRestore();
});
