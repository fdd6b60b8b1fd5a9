import type { Browser, Page } from "playwright-core";
import { libraryOutOfReach } from "../../src/problems/workbook/workbookProblems";
import type { ExcelHost } from "../host/ExcelHost";
import { saveXlsx } from "../../src/workbench/xlsx/saveXlsx";
import { FIRST_SHEET, openHeadlessWorkbook } from "../workbench/headlessWorkbook";
import { serveExcelPane, type ServedPane } from "../host/serveExcelPane";
import { openBrowser } from "./openBrowser";

declare global {
  interface Window {
    readonly excelHost: ExcelHost;
  }
}

// The width at which Excel opens a task pane on a small screen (Office Add-ins documentation, "Task panes").
const PANE = { width: 350, height: 720 };
const BROWSER_MILLISECONDS = 60_000;
jest.setTimeout(BROWSER_MILLISECONDS);

// Longer than the pane waits for a burst of selections to be over.
const OUT_OF_VIEW = 400;

let browser: Browser;
let served: ServedPane[] = [];
beforeAll(async () => {
  browser = await openBrowser();
}, BROWSER_MILLISECONDS);
afterAll(async () => {
  await browser?.close();
  await Promise.all(served.map((one) => one.close()));
});

/** The pane's page, and what went wrong in it or left for another origin. */
async function openPane(library: boolean): Promise<{ page: Page; complaints: string[] }> {
  const pane = await serveExcelPane(library);
  served = [...served, pane];
  const page = await browser.newPage({ viewport: PANE });
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  page.on("request", (request) => !request.url().startsWith(pane.address) && complaints.push(`asked for ${request.url()}`));
  await page.goto(`${pane.address}taskpane.html`);
  return { page, complaints };
}

describe("the pane in Excel, with the real client library", () => {
  test("asks nothing of Excel while This cell is out of view, and explains the selected cell when it comes back", async () => {
    const { page, complaints } = await openPane(true);
    const select = (cell: string): Promise<void> =>
      page.evaluate((where) => {
        const { book } = window.excelHost;
        book.select(book.active, where);
        window.excelHost.calculateAgain();
      }, cell);
    const requests = (): Promise<number> => page.evaluate(() => window.excelHost.requests.length);
    const heading = (cell: string): Promise<void> => page.locator("#panel-cell h2", { hasText: cell }).waitFor();
    await page.locator("#tab-cell").click();
    await heading("A1");
    await select("B2");
    await heading("B2");
    await page.locator("#tab-functions").click();
    await page.waitForTimeout(OUT_OF_VIEW);
    const before = await requests();
    for (const cell of ["C3", "D4", "A1"]) await select(cell);
    await page.waitForTimeout(OUT_OF_VIEW);
    expect(await requests()).toBe(before);
    await page.locator("#tab-cell").click();
    await heading("A1");
    await select("B2");
    await heading("B2");
    expect(complaints).toEqual([]);
  });

  test("inserts a run sheet on a new sheet and selects the first cell to fill in", async () => {
    const { page, complaints } = await openPane(true);
    await page.getByRole("button", { name: "Insert blank run sheet" }).click();
    await page.getByText("Inserted as a new sheet").waitFor();
    const seen = await page.evaluate(() => {
      const { book } = window.excelHost;
      return {
        sheets: book.sheets.map(({ name }) => name),
        active: book.active.name,
        selected: book.selected(book.active),
        filled: book.active.cells.size,
      };
    });
    expect(seen.sheets).toHaveLength(2);
    expect([seen.sheets[0], seen.sheets[1]]).toEqual(["Sheet1", seen.active]);
    expect(seen.selected).toBe("C11");
    expect(seen.filled).toBeGreaterThan(20);
    expect(complaints).toEqual([]);
  });

  test("follows the selected cell", async () => {
    const { page, complaints } = await openPane(true);
    await page.locator("#tab-cell").click();
    await page.evaluate(() => {
      window.excelHost.book.select(window.excelHost.book.active, "C7");
      window.excelHost.calculateAgain();
    });
    await page.locator("#panel-cell").getByText("C7").first().waitFor();
    expect(complaints).toEqual([]);
  });

  test("shares in a new workbook where Excel hands its file over, and in this one where it does not", async () => {
    const { page, complaints } = await openPane(true);
    const live = await openHeadlessWorkbook();
    await live.type(FIRST_SHEET, "A1", 25);
    await live.type(FIRST_SHEET, "B1", "=A1*2");
    const file = [...(await saveXlsx(live.engine))];
    live.close();
    await page.evaluate(
      ([sheet, bytes]) => {
        const host = window.excelHost;
        host.calculate = () => 50;
        host.type(sheet, "A1", 25);
        host.type(sheet, "B1", "=A1*2");
        host.file.content = Uint8Array.from(bytes);
      },
      [FIRST_SHEET, file] as const,
    );
    await page.locator("#tab-share").click();
    await page.getByRole("button", { name: "Share as values" }).click();
    await page.getByText("It was opened as a new workbook").waitFor();
    const opened = (): Promise<number[]> => page.evaluate(() => [window.excelHost.book.opened.length, window.excelHost.book.sheets.length]);
    expect(await opened()).toEqual([1, 1]);
    await page.evaluate(() => (window.excelHost.file.content = undefined));
    await page.getByRole("button", { name: "Share as plain cells" }).click();
    await page.getByText("So the copy was made in this workbook.").waitFor();
    expect(await opened()).toEqual([1, 3]);
    expect(complaints).toEqual([]);
  });

  test("says in words that the library is out of reach", async () => {
    const { page } = await openPane(false);
    await page.getByRole("alert").waitFor();
    expect(await page.getByRole("alert").textContent()).toBe(libraryOutOfReach("Excel"));
  });
});
