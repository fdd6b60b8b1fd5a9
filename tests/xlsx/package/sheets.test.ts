import { readFileSync } from "node:fs";
import path from "node:path";
import { Workbook as FileWorkbook } from "exceljs";
import type { SheetPlan } from "../../../src/workbook/SheetPlan";
import { WorkbookProblem } from "../../../src/workbook/Workbook";
import type { FileValue } from "../../../src/xlsx/package/cells/CellChange";
import { WorkbookPackage } from "../../../src/xlsx/package/WorkbookPackage";
import { addPlanned } from "../../../src/xlsx/planned/addPlanned";
import { packageOf, partsOf, type SmallWorkbook } from "../../workbench/xlsx/packageOf";
import { partsDiffering, partsIn, textOf } from "./partsIn";

const beside = new Uint8Array(readFileSync(path.join(__dirname, "../../workbench/xlsx/files/beside.xlsx")));

const plan: SheetPlan = {
  name: "Record",
  cells: [
    { cell: "A1", content: "Kiln run", style: "title" },
    { cell: "A2", content: "=not a formula", style: "input", format: "0.00%" },
    { cell: "B2", formula: "=SUM(A1:A2*2)", style: "computed" },
    { cell: "B3", formula: '=RETORT.MOLARMASS("H2O")' },
    { cell: "B4", content: 35.25, format: "0.000", heavyLeft: true },
  ],
  columnWidths: [12, 9],
  rowHeights: [{ from: 2, to: 3, height: 30 }],
  entryRules: [
    { range: "A2:A9", allow: { kind: "number", atLeast: 0, atMost: 5 }, promptTitle: "Mass", prompt: "In grams.", refusal: "A mass." },
    { range: "C2", allow: { kind: "words", words: ["a", "b"] }, promptTitle: "", prompt: "", refusal: "One of the two." },
    { range: "D2", allow: { kind: "anything" }, promptTitle: "Remark", prompt: "Anything.", refusal: "" },
  ],
  emphasis: [{ range: "A1:A2", condition: "=$A$1>2", look: "failed" }],
  charts: [{ title: "Drying & more", xTitle: "min", yTitle: "g", series: [{ name: "Sample <1>", x: "A4:A5", y: "B4:B5" }], over: "D4:H12" }],
  print: {
    ...{ area: "A1:B9", titleRows: 2, scale: 82, breaksBefore: [5], footer: { left: "a", centre: "b", right: "c" } },
    margins: { left: 20, right: 20, top: 20, bottom: 30, header: 10, footer: 10 },
  },
  frozenRows: 1,
  startAt: "A2",
};

async function cellsOf(file: WorkbookPackage, sheet: string): Promise<Map<string, { formula: string; value: FileValue }>> {
  const cells = new Map<string, { formula: string; value: FileValue }>();
  await file.readCells(sheet, ({ cell, formula, value }) => cells.set(cell, { formula, value }));
  return cells;
}

describe("planned sheets in a file of another program", () => {
  test("come behind the others under free names, and everything else stays as it was", async () => {
    const file = await WorkbookPackage.of(beside);
    expect(await addPlanned(file, [plan, { ...plan, charts: [] }, { ...plan, name: "kiln runs", charts: [] }])).toEqual([
      "Record",
      "Record (2)",
      "kiln runs (2)",
    ]);
    const bytes = await file.bytes();
    const { changed, added, gone } = await partsDiffering(beside, bytes);
    expect([[...changed].sort(), gone]).toEqual([["[Content_Types].xml", "xl/_rels/workbook.xml.rels", "xl/styles.xml", "xl/workbook.xml"], []]);
    expect(added.filter((part) => /worksheets\/sheet|charts\/chart|drawings\/drawing/.test(part))).toHaveLength(5);
    const cells = await cellsOf(await WorkbookPackage.of(bytes), "Record");
    expect([...cells].filter(([cell]) => /^[AB][1-4]$/.test(cell)).map(([cell, { formula, value }]) => [cell, formula, value])).toEqual([
      ["A1", "", "Kiln run"],
      ["A2", "", "=not a formula"],
      ["B2", "SUM(A1:A2*2)", null],
      ["B3", '_xldudf_RETORT_MOLARMASS("H2O")', null],
      ["B4", "", 35.25],
    ]);
  });

  test("keep every look the file had under its number, and bring their own", async () => {
    const file = await WorkbookPackage.of(beside);
    await addPlanned(file, [{ ...plan, charts: [] }]);
    const bytes = await file.bytes();
    const [before, after] = [await textOf(beside, "xl/styles.xml"), await textOf(bytes, "xl/styles.xml")];
    for (const list of ["fonts", "fills", "borders", "cellXfs", "dxfs"]) {
      const items = (markup: string): string => new RegExp(`<${list}[^>]*>(.*?)</${list}>`, "s").exec(markup)?.[1] ?? "";
      expect(items(after).startsWith(items(before))).toBe(true);
      const count = new RegExp(`<${list} count="(\\d+)"`).exec(after)?.[1];
      const item = { fonts: "font", fills: "fill", borders: "border", cellXfs: "xf", dxfs: "dxf" }[list];
      expect(items(after).match(new RegExp(`<${item}[ >/]`, "g"))).toHaveLength(Number(count));
    }
  });

  test("have looks, rules, page, breaks, names of their own as another reader finds them", async () => {
    const file = await WorkbookPackage.of(new Uint8Array(await new FileWorkbook().addWorksheet("Kiln").workbook.xlsx.writeBuffer()));
    await addPlanned(file, [{ ...plan, charts: [] }]);
    const read = new FileWorkbook();
    await read.xlsx.load((await file.bytes()).buffer);
    const sheet = read.getWorksheet("Record");
    expect(sheet?.getCell("A1").font).toMatchObject({ bold: true, size: 15, color: { argb: "FF1F2328" } });
    expect([sheet?.getCell("A2").numFmt, sheet?.getCell("A2").fill, sheet?.getCell("A2").border]).toMatchObject([
      "0.00%",
      { fgColor: { argb: "FFFFF8DC" } },
      { top: { style: "thin" } },
    ]);
    expect([sheet?.getCell("B4").numFmt, sheet?.getCell("B4").border.left?.style]).toEqual(["0.000", "medium"]);
    expect(sheet?.getCell("B2").model).toMatchObject({ shareType: "array", ref: "B2" });
    expect([sheet?.getColumn(1).width, sheet?.getRow(2).height]).toEqual([12, 30]);
    expect(sheet?.dataValidations.model["A2"]).toMatchObject({ type: "decimal", formulae: [0, 5], error: "A mass." });
    expect(sheet?.dataValidations.model["C2"]).toMatchObject({ type: "list", formulae: ['"a,b"'] });
    expect(sheet?.pageSetup).toMatchObject({ printArea: "A1:B9", printTitlesRow: "1:2", scale: 82 });
    expect(sheet?.views[0]).toMatchObject({ state: "frozen", ySplit: 1 });
    expect(sheet?.conditionalFormattings?.[0]).toMatchObject({ ref: "A1:A2", rules: [{ formulae: ["$A$1>2"], style: { font: { bold: true } } }] });
  });

  test("speak the stricter kind of the format in a file of that kind", async () => {
    const strict = "http://purl.oclc.org/ooxml/";
    const workbook = `<workbook xmlns="${strict}spreadsheetml/main" xmlns:r="${strict}officeDocument/relationships"><sheets><sheet name="Kiln" sheetId="7" r:id="s1"/></sheets></workbook>`;
    const file = await WorkbookPackage.of(packageOf({ sheets: { Kiln: "" }, further: { "xl/workbook.xml": workbook } }));
    await addPlanned(file, [plan]);
    const parts = await partsIn(await file.bytes());
    const written = [...parts]
      .filter(([name]) => /sheet2|chart1|drawing1|styles|xl\/_rels|sheet2.xml.rels/.test(name))
      .map(([, bytes]) => bytes.toString());
    expect(written.length).toBeGreaterThan(4);
    for (const markup of written)
      expect(markup.replace(/Id="[sty]\d?" Type="[^"]*"/g, "").replace(/package\/2006/g, "")).not.toMatch(
        /schemas\.openxmlformats\.org\/(spreadsheetml|officeDocument|drawingml)/,
      );
    expect(parts.get("xl/workbook.xml")?.toString()).toContain(`<sheet xmlns:r="${strict}officeDocument/relationships" name="Record" sheetId="8"`);
  });
});

describe("a chart on a sheet", () => {
  test("holds titles, cells, their points and gaps for blanks, and its frame stands over its cells", async () => {
    const file = await WorkbookPackage.of(
      packageOf({
        sheets: {
          "It's (a)":
            '<row r="4"><c r="A4"><v>0</v></c><c r="B4"><v>30.5</v></c></row><row r="5"><c r="A5"><v>20</v></c><c r="B5" t="str"><v></v></c></row>',
        },
      }),
    );
    await addPlanned(file, []);
    const { addCharts } = await import("../../../src/xlsx/charts/addCharts");
    await addCharts(file, "It's (a)", plan.charts ?? []);
    const bytes = await file.bytes();
    const chart = await textOf(bytes, "xl/charts/chart1.xml");
    expect([...chart.matchAll(/<a:t>(.*?)<\/a:t>/g)].map(([, text]) => text)).toEqual(["Drying &amp; more", "min", "g"]);
    expect([...chart.matchAll(/<c:f>(.*?)<\/c:f>/g)].map(([, text]) => text)).toEqual(["'It''s (a)'!$A$4:$A$5", "'It''s (a)'!$B$4:$B$5"]);
    expect([...chart.matchAll(/<c:ptCount val="2"\/>(.*?)<\/c:numCache>/g)].map(([, points]) => points)).toEqual([
      '<c:pt idx="0"><c:v>0</c:v></c:pt><c:pt idx="1"><c:v>20</c:v></c:pt>',
      '<c:pt idx="0"><c:v>30.5</c:v></c:pt>',
    ]);
    expect(chart).toContain('<c:dispBlanksAs val="gap"/>');
    expect(chart).toContain("<c:tx><c:v>Sample &lt;1&gt;</c:v></c:tx>");
    const drawing = await textOf(bytes, "xl/drawings/drawing1.xml");
    expect([...drawing.matchAll(/<xdr:(col|row)>(\d+)/g)].map(([, , place]) => Number(place))).toEqual([3, 3, 8, 12]);
    expect(await textOf(bytes, "xl/worksheets/sheet1.xml")).toMatch(/<\/sheetData><drawing xmlns:r="[^"]*" r:id="rId1"\/><\/worksheet>$/);
    expect(await textOf(bytes, "[Content_Types].xml")).toMatch(/drawing1\.xml".*chart1\.xml"/);
  });

  test("joins what else is drawn there, and stands before the tables of the sheet", async () => {
    const file = await WorkbookPackage.of(beside);
    const { addCharts } = await import("../../../src/xlsx/charts/addCharts");
    await addCharts(file, "Kiln runs", plan.charts ?? []);
    await addCharts(file, "Hidden notes", plan.charts ?? []);
    const bytes = await file.bytes();
    const { changed, added } = await partsDiffering(beside, bytes);
    expect(added.filter((part) => part.includes("chart")).length).toBe(2);
    const drawing = changed.find((part) => /drawings\/drawing\d+\.xml$/.test(part)) ?? "";
    const [before, after] = [await textOf(beside, drawing), await textOf(bytes, drawing)];
    const frame = after.slice(after.lastIndexOf("<xdr:twoCellAnchor"), after.lastIndexOf("</xdr:twoCellAnchor>") + "</xdr:twoCellAnchor>".length);
    expect(after.replace(frame, "")).toBe(before);
    const numbers = [...after.matchAll(/cNvPr id="(\d+)"/g)].map(([, number]) => number);
    expect(new Set(numbers).size).toBe(numbers.length);
  });
});

describe("sheets that stay alone", () => {
  const rels = (further: string): string =>
    String(partsOf({ sheets: { A: "", B: "", C: "" } })["xl/_rels/workbook.xml.rels"]).replace("</Relationships>", `${further}</Relationships>`);
  const workbook: SmallWorkbook = {
    sheets: {
      Kiln:
        '<row r="1"><c r="A1" t="s"><v>1</v></c><c r="B1"><f>Tins!A1*2</f><v>4</v></c><c r="C1"><f>A1&amp;"Tins!A1"</f><v>5</v></c><c r="D1"><f>tare+own+1</f><v>6</v></c>' +
        '<c r="E1"><f>SUM(Kiln:Tins!A1)</f><v>7</v></c><c r="F1"><f>[1]Tins!A1</f><v>8</v></c></row>',
      Tins: '<worksheet><sheetData><row r="1"><c r="A1" t="s"><v>0</v></c></row></sheetData></worksheet>',
      Record:
        '<worksheet><sheetData/><conditionalFormatting sqref="A1"><cfRule type="expression"><formula>Tins!A1&gt;2</formula></cfRule></conditionalFormatting></worksheet>',
    },
    before: '<bookViews><workbookView activeTab="2" firstSheet="1"/></bookViews>',
    after:
      '<definedNames><definedName name="tare">Tins!$A$1</definedName><definedName name="own">tare*2</definedName><definedName name="stays">Kiln!$A$1</definedName>' +
      '<definedName name="_xlnm.Print_Area" localSheetId="1">Tins!$A$1</definedName><definedName name="_xlnm.Print_Area" localSheetId="2">Record!$A$1</definedName></definedNames>',
    further: {
      "xl/sharedStrings.xml": "<sst><si><t>secret</t></si><si><t>shown</t></si></sst>",
      "xl/_rels/workbook.xml.rels": rels(""),
      "xl/worksheets/_rels/sheet2.xml.rels":
        '<Relationships><Relationship Id="d" Type="urn:x/drawing" Target="../drawings/drawing1.xml"/><Relationship Id="i" Type="urn:x/image" Target="../media/both.png"/></Relationships>',
      "xl/worksheets/_rels/sheet3.xml.rels": '<Relationships><Relationship Id="i" Type="urn:x/image" Target="../media/both.png"/></Relationships>',
      "xl/drawings/drawing1.xml": "<d/>",
      "xl/media/both.png": new Uint8Array([1, 2]),
      "xl/lost.xml": "<nobody names me/>",
      "[Content_Types].xml":
        '<Types><Override PartName="/xl/drawings/drawing1.xml" ContentType="d"/><Override PartName="/xl/worksheets/sheet2.xml" ContentType="w"/></Types>',
    },
  };
  // The spare parts that say they are XML and are not would be read by nobody.
  const content = packageOf(workbook);

  test("lose what belongs to the others alone, and formulas that read them keep their values", async () => {
    const file = await WorkbookPackage.of(content);
    expect(await file.keepSheets(["record", "Kiln"])).toEqual(["Kiln!B1", "Kiln!D1", "Kiln!E1"]);
    expect((await file.sheets()).map(({ name }) => name)).toEqual(["Kiln", "Record"]);
    const bytes = await file.bytes();
    expect([...(await partsDiffering(content, bytes)).gone].sort()).toEqual([
      "xl/drawings/drawing1.xml",
      "xl/worksheets/_rels/sheet2.xml.rels",
      "xl/worksheets/sheet2.xml",
    ]);
    expect(await textOf(bytes, "[Content_Types].xml")).toBe("<Types></Types>");
    const cells = await cellsOf(await WorkbookPackage.of(bytes), "Kiln");
    expect([...cells].map(([cell, { formula, value }]) => [cell, formula, value])).toEqual([
      ["A1", "", "shown"],
      ["B1", "", 4],
      ["C1", 'A1&"Tins!A1"', 5],
      ["D1", "", 6],
      ["E1", "", 7],
      ["F1", "[1]Tins!A1", 8],
    ]);
    const after = await textOf(bytes, "xl/workbook.xml");
    expect(after).toContain("<bookViews><workbookView/></bookViews>");
    expect(after.slice(after.indexOf("<definedNames>"))).toBe(
      '<definedNames><definedName name="stays">Kiln!$A$1</definedName><definedName name="_xlnm.Print_Area" localSheetId="1">Record!$A$1</definedName></definedNames></workbook>',
    );
    expect(await textOf(bytes, "xl/sharedStrings.xml")).toBe("<sst><si><t/></si><si><t>shown</t></si></sst>");
    expect(await textOf(bytes, "xl/worksheets/sheet3.xml")).toContain("<formula>#REF!&gt;2</formula>");
  });

  test("a file of another program with one sheet left has no part too many and none too few", async () => {
    const file = await WorkbookPackage.of(beside);
    await file.keepSheets(["Hidden notes"]);
    const bytes = await file.bytes();
    const names = [...(await partsIn(bytes)).keys()];
    expect(names.filter((name) => /chart|drawing|comment|table|media/i.test(name))).toEqual([]);
    const types = await textOf(bytes, "[Content_Types].xml");
    for (const [, name = ""] of types.matchAll(/PartName="\/([^"]*)"/g)) expect(names).toContain(name);
    const read = new FileWorkbook();
    await read.xlsx.load(bytes.buffer);
    // Hidden before, and the only one now.
    expect(read.worksheets.map(({ name, state }) => [name, state])).toEqual([["Hidden notes", "visible"]]);
  });

  test.each<[string, string[], SmallWorkbook, string]>([
    ["no sheet", [], workbook, "A workbook needs at least one sheet, so nothing was changed. Name a sheet that is to stay."],
    ["a sheet that is not there", ["Kiln", "Oven"], workbook, 'This workbook has no sheet "Oven" with cells, so nothing was changed.'],
    [
      "a sheet of a file with macros",
      ["Kiln"],
      { ...workbook, further: { "xl/_rels/workbook.xml.rels": rels('<Relationship Id="v" Type="urn:x/vbaProject" Target="vba.bin"/>') } },
      "This workbook has macros, which may name any of its sheets, so no sheet is taken out of it. Save it as .xlsx, without the macros, and use that.",
    ],
  ])("%s is refused, and nothing is changed", async (_what, names, odd, sentence) => {
    const before = packageOf(odd);
    const file = await WorkbookPackage.of(before);
    await expect(file.keepSheets(names)).rejects.toThrow(new WorkbookProblem(sentence));
    expect(await partsDiffering(before, await file.bytes())).toEqual({ changed: [], added: [], gone: [] });
  });
});

test("the sheet in view is the only one chosen", async () => {
  const chosen = '<worksheet><sheetViews><sheetView tabSelected="1" workbookViewId="0"/></sheetViews><sheetData/></worksheet>';
  const plain = chosen.replace(' tabSelected="1"', "");
  const file = await WorkbookPackage.of(
    packageOf({ sheets: { A: chosen, B: chosen, C: plain }, before: '<bookViews><workbookView activeTab="0"/></bookViews>' }),
  );
  await file.show("C");
  const bytes = await file.bytes();
  expect(await textOf(bytes, "xl/workbook.xml")).toContain('<workbookView activeTab="2"/>');
  expect(await Promise.all([1, 2, 3].map((sheet) => textOf(bytes, `xl/worksheets/sheet${sheet}.xml`)))).toEqual([
    plain,
    plain,
    plain.replace('workbookViewId="0"', 'workbookViewId="0" tabSelected="1"'),
  ]);
});

test("a look that differs from another in some things has the rest of it", async () => {
  const file = await WorkbookPackage.of(beside);
  const before = await textOf(beside, "xl/styles.xml");
  const count = Number(/<cellXfs count="(\d+)"/.exec(before)?.[1]);
  const line = { style: "thin", colour: "#112233" } as const;
  const looks = await file.addLooks([
    [0, { bold: true }],
    [0, { format: "0.0000", fill: "#FFE08A", wrap: true, border: { left: line } }],
    [0, { bold: true }],
    [0, { format: "General", fill: "", colour: "#7A1F0B", size: 9, italic: true, align: "right", indent: 2 }],
  ]);
  expect(looks).toEqual([count, count + 1, count, count + 2]);
  await file.changeCells(
    "Hidden notes",
    looks.slice(0, 2).map((look, index) => ({ cell: `A${index + 1}`, content: { kind: "value", value: 1 }, look })),
  );
  await file.keepSheets(["Hidden notes"]);
  const read = new FileWorkbook();
  await read.xlsx.load((await file.bytes()).buffer);
  const [bold, filled] = ["A1", "A2"].map((cell) => read.getWorksheet("Hidden notes")?.getCell(cell));
  expect([bold?.font.bold, bold?.font.name]).toEqual([true, read.getWorksheet("Hidden notes")?.getCell("Z99").font?.name ?? bold?.font.name]);
  expect([filled?.numFmt, filled?.fill, filled?.alignment?.wrapText, filled?.border?.left?.style]).toMatchObject([
    "0.0000",
    { pattern: "solid", fgColor: { argb: "FFFFE08A" } },
    true,
    "thin",
  ]);
});
