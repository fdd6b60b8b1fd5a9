// What the local workbook prints: PDF files that the browser makes, measured.
import type { Frame } from "playwright-core";
import type { WorkbenchWindow } from "../../src/workbench/WorkbenchWindow";
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import type { SheetPlan } from "../../src/workbook/SheetPlan";
import { demoRun } from "../../src/workbench/demo/orchardRun";
import { paperFaults } from "../pdf/paperFaults";
import { readPdf, type PrintedPage } from "../pdf/readPdf";
import { LocalWorkbook } from "./localWorkbook";

jest.setTimeout(120_000);

const PAPERS = ["A4", "Letter"] as const;
const usual: RunSheetOptions = { kind: "charring", weighIns: 8, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 3 };

let local: LocalWorkbook;
beforeAll(async () => void (local = await LocalWorkbook.open()));
afterAll(() => local?.close());

const show = async (sheet: string): Promise<void> => {
  await local.page.evaluate((name) => (window as WorkbenchWindow).retortWorkbench?.workbook.select({ sheet: name, cell: "A1" }), sheet);
  await local.settled();
};
const add = async (plan: SheetPlan): Promise<void> => {
  await local.page.evaluate((given) => (window as WorkbenchWindow).retortWorkbench?.workbook.addSheet(given), plan);
  await local.settled();
};
const printed = async (format: string): Promise<PrintedPage[]> => readPdf(await local.page.pdf({ format }));
const said = (pages: readonly PrintedPage[]): string => pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join("").replace(/\s/g, ""); // prettier-ignore

describe("A blank run sheet prints as a form to fill in by hand", () => {
  test.each([
    ["drying", 2],
    ["charring", 2],
    ["ashing", 3],
    ["liquids", 3],
    ["staged", 2],
    ["salt", 2],
    ["balance", 2],
  ] as const)("%s", async (kind, count) => {
    const plan = buildRunSheet({ ...usual, kind, replicates: kind === "balance" ? 1 : 3 });
    await add(plan);
    for (const paper of PAPERS) {
      const pages = await printed(paper);
      expect(paperFaults(plan, pages)).toEqual([]);
      expect(pages).toHaveLength(count);
    }
  });

  test("across where six samples are too wide for a page upright", async () => {
    const plan = buildRunSheet({ ...usual, kind: "drying", replicates: 6 });
    await add(plan);
    const pages = await printed("A4");
    expect(paperFaults(plan, pages)).toEqual([]);
    expect(pages.map(({ width, height }) => width > height)).toEqual([true, true]);
  });
});

test("a filled run sheet prints with its values and its curves", async () => {
  await show("Orchard run");
  for (const paper of PAPERS) {
    const pages = await printed(paper);
    expect(paperFaults(demoRun, pages)).toEqual([]);
    expect(pages).toHaveLength(2);
    expect(said(pages)).toContain("71.46%±0.34%(95%)ofthedryplumpruningsleftasvapour");
    expect(said(pages)).toContain("minutesheldsofar");
  }
});

test("any other sheet prints what its cells show, nothing below 8 points, cut or covered", async () => {
  for (const [sheet, text] of [
    ["Orchard kiln", "Walnutshellsintheorchard'scharkiln"],
    ["Salts class", "249.677"],
  ] as const) {
    // prettier-ignore
    await show(sheet);
    const pages = await printed("A4");
    const { texts } = { texts: pages.flatMap((page) => page.texts) };
    expect(said(pages)).toContain(text);
    expect(Math.min(...texts.map(({ size }) => size))).toBeGreaterThanOrEqual(7.99);
    expect(texts.filter(({ left, right, shown }) => left < shown.left - 1 || right > shown.right + 1)).toEqual([]);
    // Nothing of the page around the sheet.
    expect(said(pages)).not.toMatch(/Openxlsx|Taskpane|Savexlsx|localworkbook/);
  }
});

test("a sheet wider than its page goes on beside it, and a blank one says so", async () => {
  const words = Array.from({ length: 40 }, (_, index) => `word${index}`);
  const cells = words.map((content, column) => ({ cell: `${column < 26 ? "" : "A"}${String.fromCharCode(65 + (column % 26))}1`, content }));
  const wide: SheetPlan = { name: "Wide", cells, columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" };
  await add(wide);
  const pages = await printed("A4");
  expect(pages.length).toBeGreaterThan(1);
  for (const word of words) expect(said(pages)).toContain(word);
  await add({ ...wide, name: "Blank", cells: [] });
  expect(said(await printed("A4"))).toContain("Thissheetisblank,sothereisnothingtoprint.");
});

test("a name and a text that read as code stay a name and a text", async () => {
  const cells = [{ cell: "A1", content: '</style><img src=x onerror="document.title=1">' }];
  await add({ name: 'a"} b { c<d', cells, columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" });
  const pages = await printed("A4");
  expect(said(pages)).toContain('</style><imgsrc=xonerror="document.title=1">');
  expect(said(pages)).toContain('a"}b{c<d');
  expect(await local.page.title()).toBe("Retort local workbook");
});

describe("Printing begins", () => {
  const calls = (): Promise<number> => local.page.evaluate(() => (window as unknown as { printed: number }).printed);
  beforeAll(async () => {
    await local.page.evaluate(() => Object.assign(window, { printed: 0, print: () => (window as unknown as { printed: number }).printed++ }));
    await show("Salts class");
  });

  test("with the button, and with Ctrl+P or Cmd+P in the grid and in the pane, after what is being typed is entered", async () => {
    await local.page.getByRole("button", { name: "Print" }).click();
    await local.page.waitForFunction(() => (window as unknown as { printed: number }).printed === 1);
    await local.goTo("A30");
    await local.page.keyboard.type("half", { delay: 5 });
    await local.page.keyboard.press("Control+p");
    await local.page.waitForFunction(() => (window as unknown as { printed: number }).printed === 2);
    expect((await local.read("A30")).value).toBe("half");
    const pane: Frame = local.page.frames().find((frame) => frame.url().endsWith("pane.html")) ?? local.page.mainFrame();
    await pane.getByRole("tab").first().focus();
    await local.page.keyboard.press("Meta+p");
    await local.page.waitForFunction(() => (window as unknown as { printed: number }).printed === 3);
    expect(await calls()).toBe(3);
  });

  test("and leaves the page as it was", async () => {
    await local.page.pdf();
    expect(await local.page.locator("#paper").evaluate(({ childElementCount }) => childElementCount)).toBe(0);
    expect(await local.page.locator("#grid canvas").first().isVisible()).toBe(true);
    expect(local.complaints).toEqual([]);
  });
});
