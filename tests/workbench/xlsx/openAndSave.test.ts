import { HorizontalAlign } from "@univerjs/core";
import { Workbook as FileWorkbook, type Worksheet } from "exceljs";
import JSZip from "jszip";
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { demo } from "../../../src/workbench/demo/demo";
import { openXlsx } from "../../../src/workbench/xlsx/openXlsx";
import { saveXlsx } from "../../../src/workbench/xlsx/saveXlsx";
import { entryPrompt } from "../../../src/workbook/grid/writing/entryRules";
import type { GridEngine } from "../../../src/workbook/grid/GridEngine";
import { gridSheet, replaceSheets } from "../../../src/workbook/grid/writing/GridSheet";
import { sheetStyles } from "../../../src/workbook/sheetStyles";
import type { CellStyle, PlannedCell, SheetPlan } from "../../../src/workbook/SheetPlan";
import type { RangeReading } from "../../../src/workbook/Workbook";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../headlessWorkbook";

jest.setTimeout(30_000);

let open: HeadlessWorkbook;
let again: HeadlessWorkbook;
beforeEach(async () => {
  open = await openHeadlessWorkbook();
  again = await openHeadlessWorkbook();
});
afterEach(() => {
  open.close();
  again.close();
});

const fileSheet = (name: string): Promise<Worksheet> => fileOf(open.engine, name);

async function fileOf(engine: GridEngine, name: string): Promise<Worksheet> {
  const file = new FileWorkbook();
  await file.xlsx.load((await saveXlsx(engine)).buffer);
  const sheet = file.getWorksheet(name);
  if (sheet === undefined) throw new Error(`no sheet ${name}`);
  return sheet;
}

async function typed(cells: Readonly<Record<string, string | number | boolean>>): Promise<void> {
  for (const [cell, content] of Object.entries(cells)) await open.type(FIRST_SHEET, cell, content);
}

describe("a saved file", () => {
  test("holds our functions under the stored name, newer built-in ones with their prefix, and the values shown", async () => {
    await typed({
      A1: 25,
      B1: 35,
      C1: 28,
      D1: "=RETORT.VOLATILEFRACTION(A1,B1,C1)",
      D2: "=XLOOKUP(25,A1:C1,A1:C1)",
      D3: "=D1>0.5",
      D4: "=A1-25",
      D5: "=RETORT.VOLATILEFRACTION(A1,C1,B1)",
    });
    const sheet = await fileSheet(FIRST_SHEET);
    const held = ["D1", "D2", "D3", "D4", "D5"].map((cell) => [sheet.getCell(cell).formula, sheet.getCell(cell).result]);
    expect(held).toEqual([
      ["_xldudf_RETORT_VOLATILEFRACTION(A1,B1,C1)", 0.7],
      ["_xlfn.XLOOKUP(25,A1:C1,A1:C1)", 25],
      ["D1>0.5", true],
      ["A1-25", 0],
      ["_xldudf_RETORT_VOLATILEFRACTION(A1,C1,B1)", { error: "#VALUE!" }],
    ]);
  });

  test("holds a spill as an array formula over its area with every value", async () => {
    await typed({ A1: "CaCO3", A2: "H2O", B1: "=RETORT.MOLARMASS(A1:A2)" });
    const sheet = await fileSheet(FIRST_SHEET);
    expect(sheet.getCell("B1").model).toMatchObject({
      formula: "_xldudf_RETORT_MOLARMASS(A1:A2)",
      shareType: "array",
      ref: "B1:B2",
      result: 100.086,
    });
    expect(sheet.getCell("B2").value).toBe(18.015);
  });

  test("holds a formula that works on a range cell by cell as one over arrays, so that no other spreadsheet takes one cell of the range", async () => {
    await typed({
      A1: 1,
      A2: 2,
      B1: "=SUM(A1:A2*2)",
      B2: "=SUM(A1:A2)*2",
      B3: "=IF(SUM(-A:A)<0,1,2)",
      B4: "=A1+A2",
      B5: "=SUM(LEN(A1:A2))",
      B6: "=SUM(LEN(A1))",
    });
    const sheet = await fileSheet(FIRST_SHEET);
    expect(["B1", "B2", "B3", "B4", "B5", "B6"].map((cell) => [sheet.getCell(cell).model.shareType, sheet.getCell(cell).result])).toEqual([
      ["array", 6],
      [undefined, 6],
      ["array", 1],
      [undefined, 3],
      ["array", 2],
      [undefined, 1],
    ]);
    expect(sheet.getCell("B1").model.ref).toBe("B1");
  });

  test("keeps text that looks like a formula, a number or an error as text", async () => {
    await typed({ A1: "'=1+1", A2: "'007", A3: "'#N/A" });
    const sheet = await fileSheet(FIRST_SHEET);
    expect(["A1", "A2", "A3"].map((cell) => sheet.getCell(cell).value)).toEqual(["=1+1", "007", "#N/A"]);
  });
});

describe("a saved file on another machine", () => {
  test("names its font, is printed one page wide, and holds rows as high as their wrapped text, up to the highest there can be", async () => {
    const plan: SheetPlan = {
      name: "Tall",
      cells: [
        { cell: "A1", content: "a", style: "label" },
        { cell: "A2", content: "several words that do not fit", style: "columnHeading" },
        { cell: "A3", content: "many words ".repeat(200), style: "recorded" },
      ],
      columnWidths: [10],
      entryRules: [],
      frozenRows: 0,
      startAt: "A1",
    };
    await replaceSheets(open.engine, [gridSheet(plan, plan.name)]);
    const sheet = await fileSheet("Tall");
    expect(sheet.getCell("A1").font).toMatchObject({ name: "Calibri", size: 11 });
    expect(sheet.pageSetup).toMatchObject({ orientation: "landscape", fitToPage: true, fitToWidth: 1, fitToHeight: 0 });
    const inGrid = open.engine.book.getSheetByName("Tall")?.getRowHeight(1) ?? 0;
    expect(inGrid).toBeGreaterThan(40);
    expect([1, 2, 3].map((row) => sheet.getRow(row).height)).toEqual([undefined, inGrid * 0.75, 409]);
  });
});

test("a row has room for every line of text that breaks after hyphens and inside long words", async () => {
  // 24 characters fit on a line.
  const texts = ["drift-corrected grams of it", `=((B6-${"B".repeat(40)}`, "2025-11-25", "=".repeat(24), "a - b"];
  const cells = texts.map((content, row): PlannedCell => ({ cell: `A${row + 1}`, content, style: "recorded" }));
  const plan: SheetPlan = { name: "Lines", cells, columnWidths: [28], entryRules: [], frozenRows: 0, startAt: "A1" };
  await replaceSheets(open.engine, [gridSheet(plan, plan.name)]);
  const sheet = open.engine.book.getSheetByName("Lines");
  const high = (lines: number): number => (lines === 1 ? 22 : 18 * lines + 4);
  expect(texts.map((_, row) => sheet?.getRowHeight(row))).toEqual([2, 3, 1, 1, 1].map(high));
});

describe("a file opened again", () => {
  test("keeps a row height that was set by hand", async () => {
    await typed({ A2: 5 });
    open.engine.book.getSheetByName(FIRST_SHEET)?.setRowHeightsForced(1, 1, 60);
    await openXlsx(again.engine, await saveXlsx(open.engine));
    expect(again.engine.book.getSheetByName(FIRST_SHEET)?.getRowHeight(1)).toBe(60);
  });

  test("gives the demo back: every cell formula, value, number format as shown, error and its sentence", async () => {
    await replaceSheets(
      open.engine,
      demo.map((plan) => gridSheet(plan, plan.name)),
    );
    await openXlsx(again.engine, await saveXlsx(open.engine));
    expect(await again.workbook.sheetNames()).toEqual(demo.map(({ name }) => name));
    for (const { name } of demo) {
      const before: RangeReading = await open.workbook.readUsed(name);
      expect(before.rows.flat().filter(({ formula }) => formula !== "").length).toBeGreaterThan(5);
      expect(await again.workbook.readUsed(name)).toEqual(before);
    }
  });

  test("keeps looks, column widths, frozen rows, entry rules and their prompts", async () => {
    const [kiln] = demo;
    if (kiln === undefined) throw new Error("no demo");
    await replaceSheets(open.engine, [gridSheet(kiln, kiln.name)]);
    await openXlsx(again.engine, await saveXlsx(open.engine));
    const [before, after] = [open, again].map(({ engine }) => {
      const sheet = engine.book.getSheetByName(kiln.name);
      return {
        widths: kiln.columnWidths.map((_, column) => sheet?.getColumnWidth(column)),
        frozen: sheet?.getFrozenRows(),
        looks: ["A1", "A2", "A3", "A13", "A14", "B14", "B24", "C30"].map((cell) => sheet?.getRange(cell).getCellStyleData()),
        rules: sheet?.getDataValidations().map(({ rule }) => ({ ...rule, uid: "" })),
        prompt: entryPrompt(engine, { sheet: kiln.name, cell: "B16" }),
      };
    });
    expect(before?.prompt.title).toBe("Tin + sample (g)");
    expect(before?.rules).toHaveLength(2);
    expect(after).toEqual(before);
  });

  test("has results to the right and no other style, in the grid, in the file and opened again", async () => {
    const styles = Object.keys(sheetStyles) as CellStyle[];
    const cells = styles.map((style, row): PlannedCell => ({ cell: `A${row + 1}`, content: "34.8 % ± 0.1 %", style }));
    const plan: SheetPlan = { name: "Styles", cells, columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" };
    await replaceSheets(open.engine, [gridSheet(plan, plan.name)]);
    await openXlsx(again.engine, await saveXlsx(open.engine));
    const sheet = await fileSheet("Styles");
    const [inGrid, openedAgain] = [open, again].map(({ engine }) =>
      styles.filter((_, row) => engine.book.getSheetByName("Styles")?.getRange(row, 0).getCellStyleData()?.ht === HorizontalAlign.RIGHT),
    );
    const inFile = styles.filter((_, row) => sheet.getCell(`A${row + 1}`).alignment.horizontal === "right");
    const right = ["result", "runTotalNumber", "runReckoned"];
    expect([inGrid, inFile, openedAgain]).toEqual([right, right, right]);
  });

  test("carries a run sheet's page, looks, heights and conditions into the file", async () => {
    const plan = buildRunSheet({ kind: "ashing", weighIns: 6, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: 3 });
    await replaceSheets(open.engine, [gridSheet(plan, "Run")]);
    const sheet = await fileSheet("Run");
    // The file library writes page breaks and does not read them, so they are looked for in the file itself.
    const { files } = await JSZip.loadAsync(await saveXlsx(open.engine));
    const xml = await files["xl/worksheets/sheet1.xml"]?.async("string");
    expect(files["xl/charts/chart1.xml"]).toBeDefined();
    expect([...(xml ?? "").matchAll(/<brk id="(\d+)"/g)].map(([, id]) => Number(id) + 1)).toEqual(plan.print?.breaksBefore);
    const { printArea, printTitlesRow, scale, orientation, margins } = sheet.pageSetup;
    expect({ printArea: printArea?.replaceAll("$", ""), printTitlesRow, scale, orientation }).toEqual({
      printArea: plan.print?.area,
      printTitlesRow: "1:3",
      scale: 82,
      orientation: "portrait",
    });
    expect(margins?.bottom).toBeCloseTo(0.45, 9);
    expect(sheet.headerFooter.oddFooter).toMatch(/^&L&10&A, file saved \d{4}-\d\d-\d\d&C&10Page &P of &N&R&10Retort run sheet$/);
    expect(sheet.conditionalFormattings?.map(({ ref }) => ref)).toEqual(plan.emphasis?.map(({ range }) => range));
    expect([1, 2, 7, 19].map((row) => sheet.getRow(row).height)).toEqual([19.5, 18, 21, 25.5]);
    expect(sheet.getCell("F13").border).toMatchObject({ left: { style: "medium" }, bottom: { style: "dotted" } });
    expect(sheet.dataValidations.model["C11"]).toMatchObject({ type: "custom" });
  });

  // ECMA-376 Part 1, 18.17.2.3: an apostrophe within a quoted sheet name is written twice.
  test("writes the printed area and repeated rows of a sheet with an apostrophe in its name as names that can be read", async () => {
    const plan = buildRunSheet({ kind: "drying", weighIns: 3, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: 1 });
    await replaceSheets(open.engine, [gridSheet(plan, "Ana's run"), gridSheet(plan, "Kiln 2")]);
    const { files } = await JSZip.loadAsync(await saveXlsx(open.engine));
    const xml = ((await files["xl/workbook.xml"]?.async("string")) ?? "").replaceAll("&apos;", "'");
    const area = plan.print?.area.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
    expect([...xml.matchAll(/<definedName name="([^"]+)" localSheetId="(\d+)">([^<]+)</g)].map(([, ...parts]) => parts)).toEqual([
      ["_xlnm.Print_Area", "0", `'Ana''s run'!${area}`],
      ["_xlnm.Print_Titles", "0", "'Ana''s run'!$1:$3"],
      ["_xlnm.Print_Area", "1", `'Kiln 2'!${area}`],
      ["_xlnm.Print_Titles", "1", "'Kiln 2'!$1:$3"],
    ]);
  });

  test("keeps times of day as the numbers they are", async () => {
    await replaceSheets(open.engine, [
      gridSheet(
        {
          name: "Times",
          cells: [{ cell: "A1", content: 0.40625, format: "hh:mm" }],
          columnWidths: [],
          entryRules: [],
          frozenRows: 0,
          startAt: "A1",
        },
        "Times",
      ),
    ]);
    await openXlsx(again.engine, await saveXlsx(open.engine));
    expect((await again.workbook.read("Times", "A1")).rows[0]?.[0]).toMatchObject({ value: 0.40625, shown: "09:45" });
  });

  test("replaces whatever was open, also sheets of the same name", async () => {
    await typed({ A1: "from the file" });
    await again.type(FIRST_SHEET, "A1", "open before");
    await openXlsx(again.engine, await saveXlsx(open.engine));
    expect(await again.workbook.sheetNames()).toEqual([FIRST_SHEET]);
    expect((await again.workbook.read(FIRST_SHEET, "A1")).rows[0]?.[0]?.value).toBe("from the file");
  });

  test("that is no workbook is refused and what is open stays", async () => {
    await typed({ A1: 5 });
    const cutOff = (await saveXlsx(open.engine)).slice(0, -100);
    await expect(openXlsx(open.engine, cutOff)).rejects.toThrow(
      "This file is not an .xlsx workbook or is damaged, so nothing was changed. Choose a file saved as .xlsx.",
    );
    expect((await open.workbook.read(FIRST_SHEET, "A1")).rows[0]?.[0]?.value).toBe(5);
  });
});
