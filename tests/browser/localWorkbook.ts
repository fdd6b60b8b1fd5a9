import { mkdirSync } from "node:fs";
import path from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import type { WorkbenchWindow } from "../../src/workbench/WorkbenchWindow";
import type { CellReading } from "../../src/workbook/Workbook";
import { openBrowser } from "./openBrowser";
import { serveWorkbench, type ServedWorkbench } from "./serveWorkbench";

const SCREENSHOTS = path.join(__dirname, "screenshots");
const SIZE = { width: 1400, height: 860 };

/** The local workbook's page in a browser, and everything about it that must never happen. */
export class LocalWorkbook {
  /** Requests to another origin, page errors and console errors, as they came. */
  readonly complaints: string[] = [];

  private constructor(
    readonly page: Page,
    private readonly context: BrowserContext,
    private readonly browser: Browser,
    private readonly server: ServedWorkbench,
  ) {}

  static async open(): Promise<LocalWorkbook> {
    const server = await serveWorkbench();
    const browser = await openBrowser();
    const context = await browser.newContext({ viewport: SIZE, acceptDownloads: true });
    const local = new LocalWorkbook(await context.newPage(), context, browser, server);
    local.listen();
    await local.page.goto(server.address);
    await local.page.waitForSelector("body[data-ready]");
    return local;
  }

  async close(): Promise<void> {
    await this.context.close();
    await this.browser.close();
    this.server.close();
  }

  /** The same address in another window. */
  async another(): Promise<Page> {
    const page = await this.context.newPage();
    await page.goto(this.server.address);
    await page.waitForSelector("body[data-ready]");
    return page;
  }

  stopServing(): void {
    this.server.close();
  }

  /** Selects a cell of the sheet in view by the name box, as a person would. */
  async goTo(cell: string): Promise<void> {
    const box = this.page.locator('[data-u-comp="defined-name"] input').first();
    await box.click();
    await box.fill(cell);
    await box.press("Enter");
    await this.page.waitForFunction((wanted) => document.querySelector("#selected .address")?.textContent?.endsWith(`, ${wanted}`), cell);
  }

  /** Types into a cell by keyboard and enters it. */
  async type(cell: string, text: string): Promise<void> {
    await this.goTo(cell);
    await this.page.keyboard.type(text, { delay: 5 });
    await this.page.keyboard.press("Enter");
    await this.settled();
  }

  /** Resolves when every cell shows the result of what was last entered and every listener has been called. */
  async settled(): Promise<void> {
    await this.page.evaluate(async () => {
      await (window as WorkbenchWindow).retortWorkbench?.engine.settled();
      await new Promise((resolve) => setTimeout(resolve, 0));
    });
  }

  async read(cell: string): Promise<CellReading> {
    const reading = await this.page.evaluate(async (name) => {
      const workbook = (window as WorkbenchWindow).retortWorkbench?.workbook;
      const { sheet } = (await workbook?.selectedCell()) ?? { sheet: "" };
      return (await workbook?.read(sheet, name))?.rows[0]?.[0];
    }, cell);
    if (reading === undefined) throw new Error(`nothing read at ${cell}`);
    return reading;
  }

  /** Writes a picture to look at into the ignored screenshots folder. */
  async picture(name: string): Promise<void> {
    mkdirSync(SCREENSHOTS, { recursive: true });
    await this.page.screenshot({ path: path.join(SCREENSHOTS, `${name}.png`) });
  }

  private listen(): void {
    const { origin } = new URL(this.server.address);
    this.page.on("request", (request) => {
      if (!request.url().startsWith(`${origin}/`) && !/^(data|blob):/.test(request.url())) this.complaints.push(`request to ${request.url()}`);
    });
    this.page.on("response", (response) => {
      if (response.status() >= 400) this.complaints.push(`${response.status()} for ${response.url()}`);
    });
    this.page.on("pageerror", (error) => this.complaints.push(`page error: ${error.message}`));
    this.page.on("console", (message) => {
      if (message.type() === "error") this.complaints.push(`console error: ${message.text()}`);
    });
  }
}
