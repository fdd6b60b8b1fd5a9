import type { CDPSession, Page } from "playwright-core";
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import { placeOf } from "../../src/runsheet/expressions/formulaText";
import { checkOptions } from "../../src/runsheet/options/checkOptions";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { runSheet } from "../../src/runsheet/sheet/RunSheet";
import type { WorkbenchWindow } from "../../src/workbench/WorkbenchWindow";
import { LocalWorkbook } from "../browser/localWorkbook";
import { RunSheetOnPage } from "../browser/RunSheetOnPage";
import { inTurn, median, minimum, printedTook, type Took } from "./inTurn";

// The largest run sheet in the local workbook's page in Chromium, all of it done in the page by the pane's own buttons: the main thread's work to
// insert it and to add a round, a firing and a sample to it, and what an edit of a weighing takes with one such sheet in the workbook and with many.
// Processor time is the main thread's own; elapsed time is that of whoever waits, and of all else that runs on the machine. Two pages stand side
// by side and are asked in turn.
const MANY = 20;
const ADDED = 3;
const ROUNDS = 9;
const WARM_UP_ROUNDS = 2;
const OPTIONS = {
  kind: "ashing",
  weighIns: 60,
  intervalMinutes: 20,
  readability: 0.01,
  vessel: "tin",
  replicates: 6,
  charFirings: 4,
  ashFirings: 4,
  panZeros: true,
  temperatures: true,
} satisfies RunSheetOptions;
const LARGEST = buildRunSheet(OPTIONS);
/** Where the sheet works out the weight of the vessel, its zero taken off. */
const COUNTED = placeOf(runSheet(checkOptions(OPTIONS)).vessel(1));
const BOX = LARGEST.startAt;
const GROWTHS = {
  "a round": { button: "Add a round", smaller: { weighIns: OPTIONS.weighIns - ADDED }, times: ADDED },
  "a firing": { button: "Add a firing of the ash", smaller: { ashFirings: OPTIONS.ashFirings - ADDED }, times: ADDED },
  "a sample": { button: "Add a sample", smaller: { replicates: OPTIONS.replicates - 1 }, times: 1 },
} as const;
const LONGEST_WAIT = { timeout: 300_000 };
const MILLISECONDS = 1000;

/** A page with the pane beside it, and the processor time that its main thread has had. */
class MeasuredPage {
  private constructor(
    readonly local: LocalWorkbook,
    private readonly session: CDPSession,
  ) {}

  static async open(): Promise<MeasuredPage> {
    const local = await LocalWorkbook.open();
    const session = await local.page.context().newCDPSession(local.page);
    await session.send("Performance.enable");
    await RunSheetOnPage.pane(local).getByRole("tab", { name: "Run sheet" }).click();
    return new MeasuredPage(local, session);
  }

  /** What the work takes, until every cell shows what comes of it. */
  async took(work: () => Promise<unknown>): Promise<Took> {
    const [start, used] = [performance.now(), await this.worked()];
    await work();
    await this.local.settled();
    return { elapsed: performance.now() - start, processor: (await this.worked()) - used };
  }

  /** Inserts a sheet by the form. @returns its name, and what that took */
  async insert(options: Partial<Record<keyof typeof OPTIONS, number>> = {}): Promise<readonly [name: string, took: Took]> {
    const pane = RunSheetOnPage.pane(this.local);
    await pane.getByRole("radio", { name: "Drying, charring and ashing" }).check();
    for (const box of ["Pan zero before and after", "Room and sample temperature"]) await pane.getByLabel(box).check();
    for (const name of ["weighIns", "intervalMinutes", "vessel"] as const)
      await pane.locator(`#run-${name}`).fill(String(options[name] ?? OPTIONS[name]));
    for (const name of ["replicates", "charFirings", "ashFirings", "readability"] as const)
      await pane.locator(`#run-${name}`).selectOption(String(options[name] ?? OPTIONS[name]));
    const told = pane.getByText(/^Inserted as a new sheet, /);
    const took = await this.took(() => this.pressed("Insert blank run sheet", () => told.waitFor(LONGEST_WAIT)));
    return [/"(.+?)"/.exec((await told.textContent()) ?? "")?.[1] ?? "", took];
  }

  /** Grows the sheet in view by a button. @returns the name of the sheet that is in view then, and what that took */
  async grow(button: string): Promise<readonly [name: string, took: Took]> {
    const told = RunSheetOnPage.pane(this.local).locator(".grow .status:not(:empty)");
    await RunSheetOnPage.pane(this.local).getByRole("button", { name: button }).waitFor(LONGEST_WAIT);
    const took = await this.took(() => this.pressed(button, () => told.waitFor(LONGEST_WAIT)));
    const said = (await told.textContent()) ?? "";
    if (!/^(?:Added|Made): /.test(said)) throw new Error(said);
    const name = await this.local.page.evaluate(async () => (await (window as WorkbenchWindow).retortWorkbench?.workbook.selectedCell())?.sheet);
    return [name ?? "", took];
  }

  /** Every cell of a sheet that holds anything, as text. */
  async holds(sheet: string): Promise<string> {
    return this.local.page.evaluate(async (name) => {
      const { rows } = (await (window as WorkbenchWindow).retortWorkbench?.workbook.readUsed(name)) ?? { rows: [] };
      return JSON.stringify(rows.flat().flatMap(({ cell, formula, value }) => (formula === "" && value === null ? [] : [[cell, formula, value]])));
    }, sheet);
  }

  /** Presses a button by its own event, without the pointer's way to it. */
  private async pressed(name: string, told: () => Promise<unknown>): Promise<void> {
    await RunSheetOnPage.pane(this.local)
      .getByRole("button", { name, exact: true })
      .evaluate((one) => {
        for (const said of document.querySelectorAll(".status")) said.textContent = "";
        (one as HTMLButtonElement).click();
      });
    await told();
  }

  private async worked(): Promise<number> {
    const { metrics } = await this.session.send("Performance.getMetrics");
    return (metrics.find(({ name }) => name === "ThreadTime")?.value ?? NaN) * MILLISECONDS;
  }
}

/** Types a vessel's weight on a sheet, and checks what comes of it. */
async function edit(page: Page, sheet: string, grams: number): Promise<void> {
  const shown = await page.evaluate(
    async ([name, box, counted, weight]) => {
      const { engine, type, workbook } = (window as WorkbenchWindow).retortWorkbench ?? {};
      type?.({ sheet: name, cell: box }, weight);
      await engine?.settled();
      return (await workbook?.read(name, counted))?.rows[0]?.[0]?.value;
    },
    [sheet, BOX, COUNTED, grams] as const,
  );
  if (shown !== grams) throw new Error(`${COUNTED} shows ${String(shown)}, not ${grams}`);
}

function print(what: string, took: readonly Took[]): void {
  for (const side of ["processor", "elapsed"] as const) {
    const seconds = took.map((one) => one[side] / MILLISECONDS);
    const [least, middle, most] = [minimum(seconds), median(seconds), Math.max(...seconds)].map((time) => time.toFixed(2));
    console.log(`${what} (${took.length} times), ${side === "processor" ? "main thread" : "elapsed"}, s: min ${least} median ${middle} max ${most}`);
  }
}

async function main(): Promise<void> {
  const [one, many] = [await MeasuredPage.open(), await MeasuredPage.open()];
  const [alone, first] = await one.insert();
  const inserted = [first];
  const names: string[] = [];
  for (let made = 0; made < MANY; made++) {
    const [name, took] = await many.insert();
    names.push(name);
    inserted.push(took);
  }
  const formulas = LARGEST.cells.filter(({ formula }) => formula !== undefined).length;
  print(`largest sheet (${formulas} formula cells) inserted`, inserted);
  const whole = await many.holds(names[0] ?? "");
  for (const [what, { button, smaller, times }] of Object.entries(GROWTHS)) {
    let [name] = await many.insert(smaller);
    const grown: Took[] = [];
    for (let time = 0; time < times; time++) {
      const [after, took] = await many.grow(button);
      name = after;
      grown.push(took);
    }
    if ((await many.holds(name)) !== whole) throw new Error(`${name}, grown by ${what}, is not the sheet that is inserted as large`);
    print(`${what} added`, grown);
  }
  let grams = 20;
  const contender = (page: MeasuredPage, sheet: string) => (): Promise<Took> => {
    grams = Math.round(100 * grams + 1) / 100;
    return page.took(() => edit(page.local.page, sheet, grams));
  };
  const with20 = `edit with ${MANY + Object.keys(GROWTHS).length + 1}`;
  printedTook(
    await inTurn({ "edit with one": contender(one, alone), [with20]: contender(many, names[0] ?? "") }, ROUNDS, WARM_UP_ROUNDS),
    "edit with one",
  );
  await Promise.all([one.local.close(), many.local.close()]);
}

void main().then(() => process.exit(0));
