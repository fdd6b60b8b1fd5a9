// What of a sheet goes on paper, read from the headless workbook.
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { paperMarkup } from "../../../src/workbench/paper/paperMarkup";
import type { Paper } from "../../../src/workbench/paper/Paper";
import { sheetPaper } from "../../../src/workbench/paper/sheetPaper";
import { openXlsx } from "../../../src/workbench/xlsx/openXlsx";
import { saveXlsx } from "../../../src/workbench/xlsx/saveXlsx";
import type { PrintPlan, SheetPlan } from "../../../src/workbook/SheetPlan";
import { filledKinds } from "../../runsheet/filledKinds";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../headlessWorkbook";

jest.setTimeout(60_000);

const usual: RunSheetOptions = { kind: "charring", weighIns: 6, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 3 };

let open: HeadlessWorkbook;
beforeEach(async () => void (open = await openHeadlessWorkbook()));
afterEach(() => open.close());

function paperOf(name: string, { engine }: HeadlessWorkbook = open): Paper {
  const sheet = engine.book.getSheetByName(name);
  const paper = sheet && sheetPaper(engine, sheet);
  if (!paper) throw new Error(`nothing of ${name}`);
  return paper;
}
const added = async (plan: SheetPlan): Promise<Paper> => paperOf(await open.workbook.addSheet(plan));
const texts = ({ tables }: Paper): string[][] =>
  tables.flatMap(({ head, rows }) => [...head, ...rows].map(({ cells }) => cells.map(({ text }) => text).filter((text) => text !== "")));
const plain: SheetPlan = { name: "Class", cells: [], columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" };

describe("A run sheet", () => {
  test("goes on paper as planned: head, scale, margins, pages, without workings", async () => {
    const plan = buildRunSheet(usual);
    const { tables, margins, footer, landscape } = await added(plan);
    expect({ margins, footer, landscape }).toEqual({ margins: plan.print?.margins, footer: plan.print?.footer, landscape: false });
    const [table] = tables;
    expect(tables).toHaveLength(1);
    expect(table?.head).toHaveLength(3);
    expect(table?.columns).toHaveLength(9);
    // 146 pixels of 0.75 points at 82 %.
    expect(table?.columns[0]).toBeCloseTo(146 * 0.75 * 0.82, 6);
    expect(table?.rows.filter(({ beginsPage }) => beginsPage)).toHaveLength(plan.print?.breaksBefore.length ?? 0);
    expect(
      texts({ tables } as unknown as Paper)
        .flat()
        .join(),
    ).not.toContain("WORKINGS");
    // Axes and a key to draw by hand where no curve can be drawn yet, as the spreadsheet's own chart has them: minutes as planned, no weights.
    const blank = table?.rows.find(({ charts }) => charts)?.charts ?? [];
    expect(blank.map(({ title, x, y }) => [title, x, y])).toEqual((plan.charts ?? []).map(({ title, xTitle, yTitle }) => [title, xTitle, yTitle]));
    expect(blank[0]?.lines.map(({ name, points }) => [name, points])).toEqual([1, 2, 3].map((sample) => [`Sample ${sample}`, []]));
    const [svg] = paperMarkup({ tables, margins, footer, landscape, sheet: "", remark: "" }, "").html.match(/<figure>.*?<\/figure>/s) ?? [];
    const written = [...(svg ?? "").matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text);
    expect(written).toEqual(["0", "50", "100", "150", "minutes since round 1", "with the vessel, g"]);
  });

  test("does so too when it comes from a file, which the grid keeps no plan of", async () => {
    await open.workbook.addSheet(buildRunSheet(usual));
    const again = await openHeadlessWorkbook();
    await openXlsx(again.engine, await saveXlsx(open.engine));
    const [here, there] = [paperOf("Charring run"), paperOf("Charring run", again)];
    again.close();
    expect({ ...there, tables: [] }).toEqual({ ...here, tables: [] });
    expect(texts(there)).toEqual(texts(here));
    expect(there.tables.map(({ rows }) => rows.map(({ beginsPage }) => beginsPage))).toEqual(here.tables.map(({ rows }) => rows.map(({ beginsPage }) => beginsPage))); // prettier-ignore
  });

  test("has its curves drawn once something was weighed, a limit and an end foretold named once for all samples", async () => {
    const staged = await filledKinds["run of staged heating, three samples"]?.();
    if (staged === undefined) throw new Error("no staged run");
    await staged.engine.settled();
    const paper = paperOf(staged.name, { ...open, engine: staged.engine });
    staged.close();
    const charts = paper.tables.flatMap(({ rows }) => rows.flatMap((row) => row.charts ?? []));
    expect(charts.map(({ title }) => title)).toEqual(["Drying", "Left against temperature"]);
    expect(charts[1]?.lines.map(({ name, draws, look }) => [name, draws, look])).toEqual([1, 2, 3].map((sample) => [`Sample ${sample}`, "weighed", sample - 1])); // prettier-ignore
    const besides = (charts[0]?.lines ?? []).filter(({ draws }) => draws !== "weighed");
    expect(besides.length).toBeGreaterThan(1);
    expect(new Set(besides.map(({ draws, name }) => `${draws} ${name}`)).size).toBe(new Set(besides.map(({ draws }) => draws)).size);
    expect(paperMarkup(paper, "").html).toContain("<svg");
  });
});

describe("Any other sheet", () => {
  test("prints what it shows from its first cell on, upright, rows that stay in view on every page", async () => {
    const cells = [
      { cell: "B2", content: "Salt" },
      { cell: "C2", content: 0.25, format: "0.0%" },
    ];
    const paper = await added({ ...plain, cells, frozenRows: 2 });
    expect(texts(paper)).toEqual([[], ["Salt", "25.0%"]]);
    expect(paper.tables.map(({ head, rows }) => [head.length, rows.length])).toEqual([[2, 0]]);
    expect({ landscape: paper.landscape, remark: paper.remark }).toEqual({ landscape: false, remark: "" });
  });

  test("a text runs on over blank cells beside it, up to the next that holds something or is a box", async () => {
    const cells: SheetPlan["cells"] = [
      { cell: "A1", content: "A sentence that is longer than its column" },
      { cell: "D1", content: 1 },
      { cell: "A2", content: "in a box", style: "input" },
      { cell: "C2", style: "input" },
      { cell: "A3", content: "beside a box" },
      { cell: "B3", style: "input" },
    ];
    const [table] = (await added({ ...plain, cells })).tables;
    expect(table?.rows.map((row) => row.cells.map(({ across }) => across))).toEqual([
      [3, 1],
      [1, 1, 1, 1],
      [1, 1, 1, 1],
    ]);
  });

  test("merged cells stay one, and hidden rows and columns are left out", async () => {
    const sheet = open.engine.book.getSheetByName(FIRST_SHEET);
    await open.type(FIRST_SHEET, "A1", "Two by two");
    await open.type(FIRST_SHEET, "C3", "end");
    await open.type(FIRST_SHEET, "A4", "hidden");
    sheet?.getRange(0, 0, 2, 2).merge();
    sheet?.hideRows(3, 1);
    const [table] = paperOf(FIRST_SHEET).tables;
    expect(table?.rows).toHaveLength(3);
    expect(table?.rows[0]?.cells[0]).toMatchObject({ text: "Two by two", across: 2, down: 2 });
    expect(table?.rows[1]?.cells).toHaveLength(1);
  });

  test("one wider than a page across at 8 points is cut between columns, losing none", async () => {
    const columns = Array.from({ length: 20 }, (_, column) => String.fromCharCode(65 + column));
    const paper = await added({ ...plain, cells: columns.map((column) => ({ cell: `${column}1`, content: column })) });
    expect(paper.landscape).toBe(true);
    expect(paper.tables.length).toBeGreaterThan(1);
    expect(texts(paper).flat()).toEqual(columns);
    // 792 points less two margins of 36.
    for (const table of paper.tables) expect(table.columns.reduce((sum, one) => sum + one, 0)).toBeLessThanOrEqual(720.001);
  });

  test("what stands above repeated rows stands once", async () => {
    const print: PrintPlan = {
      ...{ area: "A1:A4", titleFrom: 2, titleRows: 2, scale: 80, breaksBefore: [], footer: { left: "", centre: "", right: "" } },
      margins: { left: 36, right: 36, top: 36, bottom: 36, header: 0, footer: 0 },
    };
    const cells = ["title", "heading", "first", "second"].map((content, row) => ({ cell: `A${row + 1}`, content }));
    const { tables } = await added({ ...plain, cells, print });
    expect(tables.map(({ head, rows, goesOn }) => [head.length, rows.length, goesOn])).toEqual([[0, 1, false], [1, 2, true]]); // prettier-ignore
  });

  test("a blank one prints nothing", () => {
    const sheet = open.engine.book.getSheetByName(FIRST_SHEET);
    expect(sheet && sheetPaper(open.engine, sheet)).toBeUndefined();
  });
});

test("of more cells than a page can hold ready the first rows are printed, and the paper says so", async () => {
  await open.type(FIRST_SHEET, "A1", "first");
  const sheet = open.engine.book.getSheetByName(FIRST_SHEET);
  sheet?.setRowCount(70_000);
  await open.type(FIRST_SHEET, "A65000", "last");
  const paper = paperOf(FIRST_SHEET);
  expect(paper.remark).toBe("Only the first 60000 rows of 65000 are on this print. Save the workbook and print it from a spreadsheet for the rest.");
  expect(paper.tables[0]?.rows).toHaveLength(60_000);
});

test("codes of a footer become counters and texts that no sheet's name breaks out of", () => {
  const footer = { left: "&10&A, &D", centre: "&10Page &P of &N", right: "" };
  const paper: Paper = { sheet: '"};</style>', landscape: true, margins: { left: 1, right: 2, top: 3, bottom: 4, header: 0, footer: 0 }, footer, tables: [], remark: "" }; // prettier-ignore
  const { html } = paperMarkup(paper, "printed 2026-02-01");
  expect(html).toContain("@page { size: landscape; margin: 3pt 2pt 4pt 1pt;");
  expect(html).toContain('content: "Page " counter(page) " of " counter(pages) "";');
  expect(html).toContain(String.raw`"\22 \7d \3b \3c \2f style\3e , printed 2026\2d 02\2d 01"`);
});
