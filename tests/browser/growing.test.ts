import type { Browser, Page } from "playwright-core";
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import type { WrittenCell } from "../explanation/SheetInMemory";
import { servePane } from "../pane/servePane";
import { openBrowser } from "./openBrowser";

const BROWSER_MILLISECONDS = 60_000;
jest.setTimeout(BROWSER_MILLISECONDS);

let browser: Browser;
let served: Awaited<ReturnType<typeof servePane>>;
let page: Page;
beforeAll(async () => {
  [browser, served] = await Promise.all([openBrowser(), servePane()]);
}, BROWSER_MILLISECONDS);
afterAll(async () => {
  await browser?.close();
  await served?.close();
});
beforeEach(async () => {
  page = await browser.newPage({ viewport: { width: 320, height: 720 } });
  await page.goto(served.address);
});
afterEach(() => page.close());

const options: RunSheetOptions = { kind: "charring", weighIns: 3, intervalMinutes: 20, readability: 0.01, vessel: "tin", replicates: 1 };

/** Opens a run sheet in the invented workbook, its formulas not worked out, and selects a cell of it. */
async function openRun(of: RunSheetOptions, changed: Record<string, WrittenCell> = {}): Promise<void> {
  const cells: Record<string, WrittenCell> = Object.fromEntries(
    buildRunSheet(of).cells.map(({ cell, content, formula }) => [
      cell,
      formula === undefined ? (content ?? null) : { formula, value: "…", shown: "…" },
    ]),
  );
  await page.evaluate((held) => void (window.workbook.sheets.Run = held), { ...cells, ...changed });
  await page.locator("#tab-run").click();
  await page.evaluate(() => window.workbook.select({ sheet: "Run", cell: "C12" }));
}

const group = () => page.getByRole("group", { name: "Let the sheet follow the run" });
const shownButtons = (): Promise<string[]> => group().locator("button:visible").allInnerTexts();
const told = () => group().locator(".status:not(:empty)");
const alert = () => group().locator(".alert:not(:empty)");
const held = (cell: string): Promise<unknown> => page.evaluate((at) => window.workbook.sheets.Run?.[at], cell);

test("offers what the kind of run can grow by, and nothing on any other sheet", async () => {
  await openRun(options);
  await group().waitFor();
  expect(await shownButtons()).toEqual(["Add a round", "Add a firing of the char", "Add a sample", "Mend formulas"]);
  await page.evaluate(() => window.workbook.select({ sheet: "Kiln 3", cell: "A1" }));
  await group().waitFor({ state: "hidden" });
});

test("adds a round at the press of a button and says so; what was typed moves along", async () => {
  await openRun(options, { C12: 62.5, Z15: "beside" });
  await page.getByRole("button", { name: "Add a round" }).click();
  await told().waitFor();
  expect(await told().innerText()).toBe("Added: round 4. Everything typed stands.");
  expect([await held("A15"), await held("A16"), await held("C12"), await held("Z16")]).toEqual(["Round 4, g", "Dry sample, g", 62.5, "beside"]);
});

test("a fourth sample goes onto a wider sheet of its own, and the pane says so beside it", async () => {
  await openRun({ ...options, replicates: 3 }, { C12: 62.5 });
  await page.evaluate(() => {
    const { workbook } = window;
    const add = workbook.addSheet;
    // As a spreadsheet does, which finds a free name and brings the new sheet into view.
    workbook.addSheet = async (plan) => {
      const made = await add({ ...plan, name: "Run (2)" });
      const cells = plan.cells.map(({ cell, content, formula }): [string, WrittenCell] => [
        cell,
        formula === undefined ? (content ?? null) : { formula, value: "…", shown: "…" },
      ]);
      workbook.sheets[made] = Object.fromEntries(cells);
      await workbook.select({ sheet: made, cell: plan.startAt });
      return made;
    };
  });
  await page.getByRole("button", { name: "Add a sample" }).click();
  await told().waitFor();
  const { sheet } = await page.evaluate(() => window.workbook.selectedCell());
  expect(sheet).toBe("Run (2)");
  // Longer than the pane takes to follow a new selection.
  await page.waitForTimeout(500);
  expect(await told().innerText()).toContain(`Made: sheet "${sheet}" for 4 samples, with everything that stands in the boxes of "Run".`);
});

test("says why it cannot, and that a growth waits to be finished", async () => {
  await openRun({ ...options, charFirings: 4 });
  await page.getByRole("button", { name: "Add a firing of the char" }).click();
  await alert().waitFor();
  expect(await alert().innerText()).toBe(
    "A run sheet holds at most 4 firings of the char, and this one has them. Insert another run sheet to go on.",
  );
  const record = buildRunSheet(options).cells.find(({ cell }) => cell === "O1")?.content;
  const [words = "", made = ""] = String(record).split(/(?<=made with )/);
  const begun = `${words}${JSON.stringify({ ...JSON.parse(made), becoming: { ...JSON.parse(made), weighIns: 4 } })}`;
  await page.evaluate(() => window.workbook.select({ sheet: "Kiln 3", cell: "A1" }));
  await group().waitFor({ state: "hidden" });
  await openRun(options, { O1: begun });
  const notice = page.getByText('A change of this sheet broke off half-way; all that was typed stands. "Mend formulas" finishes it.');
  await notice.waitFor();
  await page.getByRole("button", { name: "Mend formulas" }).click();
  await told().waitFor();
  expect(await told().innerText()).toBe("Finished what had broken off: the sheet is whole. Everything typed stands.");
  await notice.waitFor({ state: "hidden" });
  expect(await held("A15")).toBe("Round 4, g");
});
