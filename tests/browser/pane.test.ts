import { readFileSync } from "node:fs";
import path from "node:path";
import type { AxeResults } from "axe-core";
import type { Browser, Locator, Page } from "playwright-core";
import type { SheetInMemory } from "../explanation/SheetInMemory";
import { everyGuide } from "../../src/help/guides/everyGuide";
import { guideFile } from "../../src/help/guides/guidePage";
import { kindWords } from "../../src/runsheet/words/kindWords";
import { servePane } from "../pane/servePane";
import { openBrowser } from "./openBrowser";

declare global {
  interface Window {
    readonly workbook: SheetInMemory;
    readonly axe: { run(): Promise<AxeResults> };
  }
}

const SCREENSHOTS = path.join(__dirname, "screenshots");
const AXE = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const NARROWEST = { width: 320, height: 720 };
const BROWSER_MILLISECONDS = 60_000;
const TABS = ["run", "functions", "cell", "share"] as const;

jest.setTimeout(BROWSER_MILLISECONDS);

let browser: Browser;
let served: Awaited<ReturnType<typeof servePane>>;
let page: Page;
const complaints: string[] = [];

beforeAll(async () => {
  [browser, served] = await Promise.all([openBrowser(), servePane()]);
}, BROWSER_MILLISECONDS);

afterAll(async () => {
  await browser?.close();
  await served?.close();
});

beforeEach(async () => {
  complaints.length = 0;
  page = await browser.newPage({ viewport: NARROWEST });
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  page.on("request", (request) => !request.url().startsWith(served.address) && complaints.push(`asked for ${request.url()}`));
  await page.goto(served.address);
});

// Any error, anything the content security policy stopped, any request to another origin fails the test it happened in.
afterEach(async () => {
  await page.close();
  expect(complaints).toEqual([]);
});

const tab = (id: string): Locator => page.locator(`#tab-${id}`);
const panel = (id: string): Locator => page.locator(`#panel-${id}`);
const alertOf = (id: string): Locator => panel(id).locator(".alert:not(:empty)").first();
const toldBy = (id: string): Locator => panel(id).locator(".messages .status:not(:empty)").first();
const select = (sheet: string, cell: string): Promise<void> => page.evaluate((address) => window.workbook.select(address), { sheet, cell });

/** The states of the pane that a person meets, each opened from the one before it. */
const states: readonly (readonly [name: string, open: () => Promise<unknown>])[] = [
  ["run", () => tab("run").click()],
  ["run-guides", () => page.locator(".guides > summary").click()],
  ["run-guide-inserted", async () => (await page.getByRole("button", { name: "Insert its sheet: Water" }).click(), await toldBy("run").waitFor())],
  ["run-plan", () => page.locator(".planner > summary").click()],
  ["run-plan-kiln", () => fillPlan({ expectedLoss: "70", kiln: "450", heatingRate: "3", holdMinutes: "60", coolingHours: "5" })],
  ["run-plan-carried", () => page.getByRole("button", { name: "Carry into the form" }).click()],
  ["run-plan-wrong", () => fillPlan({ wantedUncertainty: "25" })],
  ["run-wrong-entry", async () => (await page.locator(".planner > summary").click(), await page.fill("#run-weighIns", "2"))],
  ["run-chart", async () => (await select("Drying 3", "A1"), page.locator(".chart canvas").waitFor())],
  ["run-chart-table", () => page.locator(".chart summary").click()],
  ["functions", () => tab("functions").click()],
  ["functions-found", () => page.fill("#function-search", "water lost")],
  ["functions-guide", () => page.fill("#function-search", "which balance do I need")],
  ["functions-none", () => page.fill("#function-search", "zeppelin")],
  ["function", async () => (await page.fill("#function-search", "constantweight.steps"), page.locator(".function-item").first().click())],
  ["cell", async () => (await tab("cell").click(), await select("Kiln 3", "B12"), heading("B12"))],
  ["cell-wrong", async () => (await select("Kiln 3", "B13"), heading("B13"))],
  ["cell-spilled", async () => (await select("Kiln 3", "D7"), heading("D7"))],
  ["cell-table", async () => (await select("Kiln 3", "B15"), heading("B15"))],
  ["cell-table-more", () => page.locator(".more summary").click()],
  ["cell-name-error", async () => (await select("Kiln 3", "B22"), heading("B22"))],
  ["cell-waiting", async () => (await select("Kiln 3", "B14"), heading("B14"))],
  ["share", () => tab("share").click()],
  ["share-refused", async () => (await copySheet("Kiln 3"), await alertOf("share").waitFor())],
  ["share-as-is", async () => (await lookAsItIs("Kiln 3"), await panel("share").getByText("Not yet:").waitFor())],
  ["share-mend", async () => (await lookForBroken("Kiln 3"), await panel("share").getByText("can be entered again: B22").waitFor())],
  ["share-made", async () => (await copySheet("Drying 3"), await toldBy("share").waitFor())],
]; // prettier-ignore

const fillPlan = async (typed: Readonly<Record<string, string>>): Promise<void> => {
  for (const [name, value] of Object.entries(typed)) await page.fill(`#plan-${name}`, value);
};

const copySheet = async (sheet: string): Promise<void> => {
  await page.locator("#share-sheet option", { hasText: sheet }).first().waitFor({ state: "attached" });
  await page.selectOption("#share-sheet", sheet);
  await page.getByRole("button", { name: "Share as values" }).click();
};

const lookAsItIs = async (sheet: string): Promise<void> => {
  await page.selectOption("#share-sheet", sheet);
  await page.getByRole("button", { name: "See what will happen" }).click();
};

const lookForBroken = async (sheet: string): Promise<void> => {
  await page.selectOption("#share-sheet", sheet);
  await page.getByRole("button", { name: "Look for formulas to enter again" }).click();
};

const heading = (cell: string): Promise<void> => panel("cell").locator("h2", { hasText: cell }).waitFor();

describe.each([
  ["light", { colorScheme: "light" }],
  ["dark", { colorScheme: "dark" }],
  ["forced colours", { forcedColors: "active" }],
] as const)("the pane in %s", (look, media) => {
  test("has no accessibility violation in any state, and no sideways scroll at 320 px", async () => {
    await page.emulateMedia(media);
    await page.evaluate(AXE);
    for (const [name, open] of states) {
      await open();
      const { found, checked } = await page.evaluate(async () => {
        const { violations, passes } = await window.axe.run();
        return { found: violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`), checked: passes.length };
      });
      expect({ state: name, found }).toEqual({ state: name, found: [] });
      expect(checked).toBeGreaterThan(0);
      expect({ state: name, width: await page.evaluate(() => document.documentElement.scrollWidth) }).toEqual({
        state: name,
        width: NARROWEST.width,
      });
      await page.screenshot({ path: path.join(SCREENSHOTS, `pane-${name}-${look.replace(" ", "-")}.png`), fullPage: true });
    }
  });
});

describe("the pane by keyboard alone", () => {
  test("walks the tabs with arrows, Home and End, showing one panel and a visible focus at a time", async () => {
    await page.keyboard.press("Tab");
    const steps = [
      ["ArrowRight", "functions"],
      ["ArrowRight", "cell"],
      ["ArrowRight", "share"],
      ["ArrowRight", "run"],
      ["ArrowLeft", "share"],
      ["Home", "run"],
      ["End", "share"],
    ] as const;
    for (const [key, id] of steps) {
      await page.keyboard.press(key);
      const seen = await page.evaluate(() => ({
        focused: document.activeElement?.id,
        outline: getComputedStyle(document.activeElement as Element).outlineStyle,
        selected: [...document.querySelectorAll("[role=tab][aria-selected=true]")].map((one) => one.id),
        shown: [...document.querySelectorAll<HTMLElement>("[role=tabpanel]")].filter((one) => !one.hidden).map((one) => one.id),
      }));
      expect(seen).toEqual({ focused: `tab-${id}`, outline: "solid", selected: [`tab-${id}`], shown: [`panel-${id}`] });
    }
  });

  test("finds a function, opens it, puts it into the selected cell and goes back to where it was", async () => {
    await select("Kiln 3", "F3");
    await page.keyboard.press("Tab");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    await page.keyboard.type("moisture.wet");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("MOISTURE.WET");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await toldBy("functions").waitFor();
    expect(await toldBy("functions").textContent()).toBe('Put into F3 on sheet "Kiln 3". Now replace its numbers with your own cells.');
    expect(await page.evaluate(() => window.workbook.sheets["Kiln 3"]?.["F3"])).toEqual({ formula: "=RETORT.MOISTURE.WET(25, 35, 31.5)" });
    await page.keyboard.press("Shift+Tab");
    await page.keyboard.press("Enter");
    expect(await page.evaluate(() => document.activeElement?.querySelector("strong")?.textContent)).toBe("MOISTURE.WET");
  });
});

describe("the focus in This cell", () => {
  const focused = () => page.evaluate(() => document.activeElement?.id || document.activeElement?.textContent);
  const explainedAnew = async (cell: string): Promise<void> => {
    await page.evaluate(() => document.querySelector(".explanation h2")?.setAttribute("data-before", ""));
    await select("Kiln 3", cell);
    await panel("cell").locator("h2:not([data-before])", { hasText: cell }).waitFor();
  };

  test("stays where it is while the cell is explained anew, and goes to the tab panel when another cell has no such place", async () => {
    await tab("cell").click();
    await explainedAnew("B15");
    await page.locator(".more summary").press("Enter");
    await explainedAnew("B15");
    expect(await focused()).toBe("More on these inputs");
    expect(await page.locator("details.more").getAttribute("open")).toBe("");
    await explainedAnew("B22");
    expect(await focused()).toBe("panel-cell");
  });

  test("is taken from nothing else", async () => {
    await tab("cell").click();
    await explainedAnew("B15");
    expect(await focused()).toBe("tab-cell");
  });
});

describe("the Run sheet tab", () => {
  test("inserts the sheet that the form asks for and says its name", async () => {
    await page.getByLabel("Drying, charring and ashing").check();
    await page.fill("#run-weighIns", "12");
    await page.selectOption("#run-replicates", "3");
    await page.getByRole("button", { name: "Insert blank run sheet" }).click();
    await toldBy("run").waitFor();
    expect(await toldBy("run").textContent()).toMatch(/^Inserted as a new sheet, "Ashing run"\. Start at cell C11\.$/);
    const added = await page.evaluate(() =>
      window.workbook.added.map(({ name, cells }) => ({ name, samples: cells.filter(({ content }) => content === "Sample 3").length })),
    );
    expect(added).toHaveLength(1);
    expect(added[0]?.name).toBe("Ashing run");
    expect(added[0]?.samples).toBeGreaterThan(0);
  });

  test("puts the ticked extra columns on the sheet", async () => {
    const insert = page.getByRole("button", { name: "Insert blank run sheet" });
    await insert.click();
    await toldBy("run").waitFor();
    await page.getByLabel("Pan zero before and after").check();
    await page.getByLabel("Room and sample temperature").check();
    await insert.click();
    await toldBy("run").waitFor();
    const headings = await page.evaluate(() =>
      window.workbook.added.map(({ cells }) =>
        cells.map(({ content }) => content).filter((content) => /^(Zero|Room, °|Sample, °)/.test(String(content))),
      ),
    );
    expect(headings[0]).toEqual([]);
    expect([...new Set(headings[1])]).toEqual(["Zero before, g", "Zero after, g", "Room, °C", "Sample, °C"]);
  });

  test("shows the cautions of the kind of run before its button, and defers to local codes", async () => {
    const cautions = panel("run").locator(".caution-box li");
    await page.getByLabel("Drying only").check();
    const drying = await cautions.allTextContents();
    await page.getByLabel("Drying and charring", { exact: false }).first().check();
    const charring = await cautions.allTextContents();
    expect(drying.join(" ")).not.toMatch(/toxic/);
    expect(charring.join(" ")).toMatch(/toxic and flammable/);
    expect(charring.at(-1)).toMatch(/^Local codes/);
    expect(
      await page.evaluate(() => {
        const [box, insert] = [document.querySelector(".caution-box li"), document.querySelector("#panel-run button.primary")] as [Element, Element];
        return (box.compareDocumentPosition(insert) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
      }),
    ).toBe(true);
  });

  test("says in words what is wrong with an entry, marks it, and inserts nothing", async () => {
    await page.fill("#run-weighIns", "two");
    const problem = 'Weigh-ins: "two" is not a number. Type digits, such as 30 or 0.01.';
    expect(await page.locator("#run-weighIns-problem").textContent()).toBe(problem);
    expect(await page.getAttribute("#run-weighIns", "aria-invalid")).toBe("true");
    await page.getByRole("button", { name: "Insert blank run sheet" }).click();
    await alertOf("run").waitFor();
    expect(await alertOf("run").textContent()).toBe(problem);
    expect(await page.evaluate(() => window.workbook.added.length)).toBe(0);
    await page.fill("#run-weighIns", "3");
    expect(await page.getAttribute("#run-weighIns", "aria-invalid")).toBe("false");
  });

  test("draws the drying of the selected sheet and gives the same weighings as a table", async () => {
    await select("Drying 3", "A1");
    await page.locator(".chart canvas").waitFor();
    const painted = await page.locator(".chart canvas").evaluate((canvas: HTMLCanvasElement) => {
      const pixels = canvas.getContext("2d")?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
      const colours = new Set<number>();
      for (let at = 0; at < pixels.length; at += 4)
        if (pixels[at + 3] === 255) colours.add(((pixels[at] ?? 0) << 16) | ((pixels[at + 1] ?? 0) << 8) | (pixels[at + 2] ?? 0));
      return colours.size;
    });
    expect(painted).toBeGreaterThan(2);
    expect(await page.locator(".chart-key li").allTextContents()).toEqual(["Tin A, hazel shells", "Tin B, prunings"]);
    const rows = await page
      .locator(".chart tbody tr")
      .evaluateAll((lines) => lines.map((line) => [...line.children].map((cell) => cell.textContent)));
    expect(rows).toHaveLength(6);
    expect(rows[1]).toEqual(["30", "11.31", "10.02"]);
    expect(await page.getAttribute(".plot", "aria-label")).toMatch(/Tin A, hazel shells: from 12\.4 g to 10\.46 g\./);
  });

  test("keeps the opened table open when a weighing is added", async () => {
    await select("Drying 3", "A1");
    await page.locator(".chart summary").click();
    await page.evaluate(() => Object.assign(window.workbook.sheets["Drying 3"] ?? {}, { A10: 7, B10: 180, C10: 10.46 }));
    await select("Drying 3", "C11");
    await page.locator(".chart tbody tr").nth(6).waitFor();
    expect(await page.locator(".chart details").getAttribute("open")).not.toBeNull();
  });

  test("takes the chart away when a sheet without a drying table is selected", async () => {
    await select("Drying 3", "A1");
    await page.locator(".chart canvas").waitFor();
    await select("Kiln 3", "A1");
    await page.locator(".chart canvas").waitFor({ state: "detached" });
    expect(await page.locator(".chart-section .hint").textContent()).toMatch(/^The selected sheet has no drying table/);
  });

  test("leaves the chart to a workbook that draws its own", async () => {
    await page.goto(`${served.address}?charts`);
    await tab("run").waitFor();
    expect(await page.locator(".chart-section").count()).toBe(0);
  });
});

describe("the worked guides", () => {
  test("a guide's sheet is in the degrees that the form is set to, the same oven among them", async () => {
    await page.selectOption("#run-degrees", "F");
    await page.locator(".guides > summary").click();
    await page.getByRole("button", { name: "Insert its sheet: Dry and char a sample", exact: true }).click();
    await toldBy("run").waitFor();
    const texts = await page.evaluate(() => window.workbook.added.flatMap(({ cells }) => cells.map(({ content }) => String(content ?? ""))));
    expect(texts.filter((text) => text.includes("°F"))).not.toEqual([]);
    // Sources of what materials stand are quoted in the degrees of the source; headings are not.
    expect(texts.filter((text) => text.length < 30 && text.includes("°C"))).toEqual([]);
    // 105 °C
    expect(texts.some((text) => /\b221\b/.test(text))).toBe(true);
  });

  test.each(everyGuide.map((guide) => [guide.title, guide] as const))(
    "%s: its page is linked, and its sheet is made as told",
    async (title, guide) => {
      expect(await page.locator(".guides").getAttribute("open")).toBeNull();
      await page.locator(".guides > summary").click();
      expect(await page.getByRole("link", { name: title, exact: true }).getAttribute("href")).toBe(`help/${guideFile(guide)}`);
      await page.getByRole("button", { name: `Insert its sheet: ${title}`, exact: true }).click();
      await toldBy("run").waitFor();
      expect(await toldBy("run").textContent()).toMatch(
        /^Inserted as a new sheet, ".+"\. Start at cell [A-Z]+\d+\. Read its cautions before you start\.$/,
      );
      const { kind, label, typed } = guide.sheet;
      expect((await page.locator(`label[for="run-kind-${kind}"] > span`).textContent())?.startsWith(label)).toBe(true);
      const [added, ...more] = await page.evaluate(() =>
        window.workbook.added.map(({ name, cells }) => ({ name, texts: cells.map(({ content }) => content) })),
      );
      expect(more).toEqual([]);
      expect(added?.name).toBe(kindWords[kind].sheetName);
      for (const text of Object.values(typed)) expect(added?.texts).toContain(Number.isNaN(Number(text)) ? text : Number(text));
    },
  );

  test.each([
    ["which balance do I need", "Which balance do I need"],
    ["is my lime burnt through", "Is my lime burnt through"],
    ["how much water in copper sulphate", "Water in a hydrate"],
    ["what did I catch", "What did I catch"],
    ["carbon monoxide in the shed", "What will my kiln give off, and what must I do about it"],
    ["char yield", "Dry and char a sample"],
  ])("%s finds, under the first function, the guide %s with its sheet", async (query, title) => {
    await tab("functions").click();
    await page.fill("#function-search", query);
    expect(await panel("functions").locator(".guide-lines a").allTextContents()).toEqual([title]);
    await page.getByRole("button", { name: `Insert its sheet: ${title}`, exact: true }).click();
    await toldBy("functions").waitFor();
    expect(await page.evaluate(() => window.workbook.added.length)).toBe(1);
  });
});

describe("Plan a run, in the Run sheet tab", () => {
  const outcome = (): Promise<string[]> => page.locator(".planner .outcome p").allTextContents();
  const grams = async (): Promise<number> => Number(/at least ([\d.]+)/.exec((await outcome())[0] ?? "")?.[1]);

  test("is closed at first, so that the form stays short", async () => {
    expect(await page.locator("#plan-wantedUncertainty").isVisible()).toBe(false);
  });

  test("asks for a smaller sample of a finer balance, in words that change as the form above it does", async () => {
    await page.locator(".planner > summary").click();
    const coarse = await grams();
    await page.selectOption("#run-readability", "0.001");
    expect(await grams()).toBeCloseTo(coarse / 10, 2);
    await page.fill("#run-intervalMinutes", "60");
    expect((await outcome())[1]).toMatch(/^5 weigh-ins, 1\sh apart, take 4\sh:/);
  });

  test("carries the weigh-ins into the form, by keyboard alone", async () => {
    await page.locator("#run-intervalMinutes").focus();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    for (const typed of ["0.2", "50", "70", "6", "450", "3", "60", "5"]) {
      await page.keyboard.press("Tab");
      await page.keyboard.press("Control+A");
      await page.keyboard.type(typed);
    }
    expect((await outcome())[2]).toMatch(/^The kiln runs for 3\sh\s23\smin from 20\s°C .* 3 firings and the drying take 31\sh\s30\smin\.$/);
    expect((await outcome())[3]).toMatch(/^Expect about [\d.]+ litres of hot, toxic, flammable gas/);
    // The box of what else may be known is passed by.
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await toldBy("run").waitFor();
    expect(await toldBy("run").textContent()).toMatch(
      /^Weigh-ins in the form are now 20\. The sheet will hold the plan: 12\.1\sg moist in each vessel, and what else is known\.$/,
    );
    expect(await page.inputValue("#run-weighIns")).toBe("20");
    expect(await panel("run").locator(".plan").textContent()).toMatch(/^20 weigh-ins of one sample/);
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Leave the plan out");
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("run-weighIns");
  });

  test("says under its box what is wrong, carries nothing, and takes the complaint back once it is mended", async () => {
    await page.locator(".planner > summary").click();
    await fillPlan({ expectedLoss: "170", dryingHours: "10" });
    const problem = "Expected loss (%): 170 % is not between 0 and 100 %. Give a number in between.";
    expect(await page.locator("#plan-expectedLoss-problem").textContent()).toBe(problem);
    expect(await page.getAttribute("#plan-expectedLoss", "aria-invalid")).toBe("true");
    await page.getByRole("button", { name: "Carry into the form" }).click();
    await alertOf("run").waitFor();
    expect(await alertOf("run").textContent()).toBe(problem);
    expect(await page.inputValue("#run-weighIns")).toBe("8");
    await fillPlan({ expectedLoss: "70" });
    expect(await alertOf("run").count()).toBe(0);
    expect(await page.getAttribute("#plan-expectedLoss", "aria-invalid")).toBe("false");
  });

  test("says at Insert that a plan that was typed and neither carried nor left out is not on the sheet", async () => {
    const insert = page.getByRole("button", { name: "Insert blank run sheet" });
    const notCarried = ' It holds nothing of the plan typed above. To have the plan on it, press "Carry into the form" and insert again.';
    await insert.click();
    await toldBy("run").waitFor();
    expect(await toldBy("run").textContent()).not.toContain(notCarried);
    await page.locator(".planner > summary").click();
    await fillPlan({ dryingHours: "10" });
    await insert.click();
    await toldBy("run").waitFor();
    expect(await toldBy("run").textContent()).toContain(notCarried);
    await page.getByRole("button", { name: "Carry into the form" }).click();
    // What was said before goes with the next entry, and the plan goes onto the sheet as it stands then.
    await fillPlan({ dryingHours: "11" });
    await insert.click();
    await toldBy("run").waitFor();
    expect(await toldBy("run").textContent()).toMatch(/^Inserted/);
    expect(await toldBy("run").textContent()).not.toContain(notCarried);
  });

  test("puts the carried plan on the sheet as it stands then, stops where it no longer stands, and leaves it out on request", async () => {
    const insert = page.getByRole("button", { name: "Insert blank run sheet" });
    const planned = () =>
      page.evaluate(() =>
        window.workbook.added.map(({ cells }) => cells.filter(({ content }) => content === "Planned moist, g" || content === "mild steel").length),
      );
    await page.locator(".planner > summary").click();
    await page.locator(".planner details > summary").click();
    await page.selectOption("#plan-vesselMaterial", "mild steel");
    await page.getByRole("button", { name: "Carry into the form" }).click();
    await fillPlan({ wantedUncertainty: "0.005" });
    await insert.click();
    await alertOf("run").waitFor();
    const problem = "Uncertainty (± %): 0.005 may be 0.005 % or 0.5 %. Type 0.5, or 0.005 % with its sign.";
    expect(await alertOf("run").textContent()).toBe(`Plan a run: ${problem} Mend it there, or press "Leave the plan out".`);
    await fillPlan({ wantedUncertainty: "1" });
    await insert.click();
    await toldBy("run").waitFor();
    // The material stands in the list of vessels too, and in the box of the settings.
    expect(await planned()).toEqual([3]);
    await page.getByRole("button", { name: "Leave the plan out" }).click();
    await insert.click();
    await page.waitForFunction(() => window.workbook.added.length === 2);
    expect(await planned()).toEqual([3, 1]);
  });

  test("asks about the kiln only where the run goes on after drying, and cautions accordingly", async () => {
    await page.locator(".planner > summary").click();
    const caution = page.locator(".planner .caution-box");
    expect(await page.locator("#plan-kiln").isVisible()).toBe(true);
    expect(await caution.textContent()).toMatch(/larger sample gives off more toxic, flammable vapour.*Local codes/);
    await page.getByLabel("Drying only").check();
    expect(await page.locator("#plan-kiln").isVisible()).toBe(false);
    expect(await page.locator("#plan-expectedLoss").isVisible()).toBe(false);
    expect(await caution.textContent()).toMatch(/larger sample gives off more vapour and dries more slowly.*Local codes/);
  });
});

describe("Gather runs, in the Run sheet tab", () => {
  const gather = async (): Promise<void> => page.getByRole("button", { name: "Gather runs" }).click();
  const results = { A5: "RESULTS (shares)", B5: "Trust", C5: "Sample 1", F5: "1 ± 95 %", A6: "Left as vapour, of dry", B6: "✓", F6: 0.001 };

  test("says that there is none to gather while there is no run sheet", async () => {
    await gather();
    await alertOf("run").waitFor();
    expect(await alertOf("run").textContent()).toBe("No run sheet is in this workbook yet. Insert one above, weigh a run, then gather.");
    expect(await page.evaluate(() => window.workbook.added.length)).toBe(0);
  });

  test("makes a sheet and says of how many samples, and what it left out", async () => {
    await page.evaluate((cells) => {
      const legend = "Left of the heavy line: by hand. Right of it: by the sheet.";
      window.workbook.sheets["Run"] = { ...cells, A1: legend, C6: { formula: "=1-0.29", value: 0.71 } };
      window.workbook.sheets["Copy"] = { ...cells, A1: legend, C6: 0.71 };
    }, results);
    await gather();
    await toldBy("run").waitFor();
    expect(await toldBy("run").textContent()).toBe(
      'Gathered 1 sample of 1 run sheet on a new sheet, "Gathered runs". It follows later corrections. Left out: "Copy", a copy with values: it follows no correction.',
    );
    expect(await page.evaluate(() => window.workbook.added.map(({ name }) => name))).toEqual(["Gathered runs"]);
  });
});

// Longer than the pane waits for a burst of selections to settle.
const SETTLING = 300;

describe("the drying chart in the Run sheet tab", () => {
  const chartComesFirst = (): Promise<boolean> =>
    page.evaluate(() => {
      const [chart, form] = [document.querySelector(".chart-section"), document.querySelector("#panel-run form")] as [Element, Element];
      return (chart.compareDocumentPosition(form) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
    });

  test("stands before the form while a drying table is weighed into, and after it otherwise", async () => {
    expect(await chartComesFirst()).toBe(false);
    await select("Drying 3", "A1");
    await page.locator(".chart canvas").waitFor();
    expect(await chartComesFirst()).toBe(true);
    await select("Kiln 3", "A1");
    await page.locator(".chart canvas").waitFor({ state: "detached" });
    expect(await chartComesFirst()).toBe(false);
  });

  test("is drawn without any other sheet being read", async () => {
    await page.evaluate(() => {
      const { workbook } = window;
      const read = workbook.readUsed;
      workbook.readUsed = (sheet) => {
        document.title += ` read ${sheet}`;
        return read(sheet);
      };
    });
    for (const cell of ["A1", "B12", "D7"]) {
      await select("Kiln 3", cell);
      await page.waitForTimeout(SETTLING);
    }
    await select("Drying 3", "A1");
    await page.locator(".chart canvas").waitFor();
    expect(await page.title()).toMatch(/^(?!.*read Kiln 3).*read Drying 3/);
  });

  test("takes neither the focus nor what is typed out of the form when it moves", async () => {
    await page.fill("#run-weighIns", "12");
    await select("Drying 3", "A1");
    await page.locator(".chart canvas").waitFor();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("run-weighIns");
    expect(await page.inputValue("#run-weighIns")).toBe("12");
  });
});

describe("the Functions tab", () => {
  test("says in full what an input is, beyond the host's one line", async () => {
    await tab("functions").click();
    await page.fill("#function-search", "constantweight.steps");
    await page.locator(".function-item").first().click();
    expect(await panel("functions").locator(".detail").first().textContent()).toBe(
      "A vessel left in hides the change: give it as vessel, or give net weighings.",
    );
  });

  test("says so when nothing answers to a search, and lists everything again when it is cleared", async () => {
    await tab("functions").click();
    const all = await page.locator(".function-item").count();
    await page.fill("#function-search", "zeppelin");
    expect(await page.locator(".function-item").count()).toBe(0);
    expect(await panel("functions").getByRole("status").first().textContent()).toMatch(/^No function answers to "zeppelin"\./);
    await page.fill("#function-search", "");
    expect(await page.locator(".function-item").count()).toBe(all);
  });

  test("does not write over a filled cell and says so", async () => {
    await select("Kiln 3", "B1");
    await tab("functions").click();
    await page.locator(".function-item").first().click();
    await page.getByRole("button", { name: "Put into the selected cell" }).click();
    await alertOf("functions").waitFor();
    expect(await alertOf("functions").textContent()).toBe("B1 already holds something. Select a blank cell.");
    expect(await page.evaluate(() => window.workbook.sheets["Kiln 3"]?.["B1"])).toBe(25.02);
  });
});

describe("the This cell tab", () => {
  test("follows the selection and says the answer in its live region", async () => {
    await tab("cell").click();
    await heading("B12");
    expect(await toldBy("cell").textContent()).toBe("B12, RETORT.VOLATILEFRACTION: Volatile fraction 0.6958661 (69.59 %).");
    await select("Kiln 3", "B18");
    await select("Kiln 3", "B13");
    await heading("B13");
    expect(await panel("cell").locator(".problem").textContent()).toBe(
      "#VALUE! after: 35.18 g is more than before, 28.11 g. Check for swapped cells or regained moisture.",
    );
    expect(await panel("cell").locator(".at-fault dt").textContent()).toMatch(/^after/);
  });

  test("keeps what more there is to say of the inputs behind one line", async () => {
    await tab("cell").click();
    await select("Kiln 3", "B15");
    await heading("B15");
    const more = panel("cell").locator(".more");
    expect(await more.locator("dd").first().isVisible()).toBe(false);
    await more.locator("summary").click();
    expect(await more.locator("dt").allTextContents()).toEqual(["weights", "limit", "criterion"]);
  });

  test("says at once what more there is to say of the input that the problem names", async () => {
    await tab("cell").click();
    await select("Kiln 3", "B24");
    await heading("B24");
    expect(await panel("cell").locator(".problem").textContent()).toBe(
      '#VALUE! weights: row 2 holds "spilt", not a weighing. Clear the cell or give grams.',
    );
    expect(await panel("cell").locator(".at-fault .about").textContent()).toMatch(/\. A vessel left in hides the change: give it as vessel/);
    expect(await panel("cell").locator(".more").count()).toBe(0);
  });

  test("explains nothing while it is out of view, and the newest selection when it comes into view", async () => {
    await tab("cell").click();
    await heading("B12");
    await tab("share").click();
    await select("Kiln 3", "B13");
    await tab("cell").click();
    await heading("B13");
  });

  test("shows the workbook's own message when it cannot be read", async () => {
    await page.evaluate(() => {
      window.workbook.look = () => Promise.reject(new Error("A cell is being edited. Press Enter or Esc in the sheet and try again."));
    });
    await tab("cell").click();
    await alertOf("cell").waitFor();
    expect(await alertOf("cell").textContent()).toBe("A cell is being edited. Press Enter or Esc in the sheet and try again.");
    expect(await alertOf("cell").boundingBox()).toMatchObject({ height: expect.any(Number) });
  });
});

describe("the Share tab", () => {
  test("makes a copy with values and a record, and names both", async () => {
    await page.evaluate(() => void (window.workbook.sheets["Done"] = { B1: { formula: "=RETORT.VOLATILEFRACTION(25,35,28)", value: 0.7 } }));
    await tab("share").click();
    await page.locator("#share-sheet option", { hasText: "Done" }).waitFor({ state: "attached" });
    await page.selectOption("#share-sheet", "Done");
    await page.getByRole("button", { name: "Share as values" }).click();
    await toldBy("share").waitFor();
    expect(await toldBy("share").textContent()).toBe('Made "Done values" and its record, "Done record". One formula cell became a value.');
    expect(await page.evaluate(() => window.workbook.sheets["Done values"]?.["B1"])).toBe(0.7);
  });

  test("shows the copy once there is one, and not before", async () => {
    const show = page.getByRole("button", { name: "Show the copy" });
    await tab("share").click();
    expect(await show.count()).toBe(0);
    await copySheet("Drying 3");
    await show.click();
    await panel("share").getByText('"Drying 3 values" is in view. Its record is "Drying 3 record".').waitFor();
    expect(await page.evaluate(() => window.workbook.selected)).toEqual({ sheet: "Drying 3 values", cell: "A1" });
    await copySheet("Kiln 3");
    await alertOf("share").waitFor();
    expect(await show.count()).toBe(0);
  });

  test("offers to go on with the values shown only where the workbook keeps saying that something waits", async () => {
    const goOn = page.getByRole("button", { name: "Share the values shown now" });
    await tab("share").click();
    await page.evaluate(() => (window.workbook.calculating = { state: "pending", manual: false }));
    await copySheet("Drying 3");
    await goOn.click();
    await toldBy("share").waitFor();
    expect(await toldBy("share").textContent()).toContain('Made "Drying 3 values"');
    expect(await goOn.count()).toBe(0);
    await page.evaluate(() => (window.workbook.calculating = { state: "pending", manual: true }));
    await copySheet("Drying 3");
    await alertOf("share").waitFor();
    expect(await goOn.count()).toBe(0);
  });

  test("offers to remove what a failed task may have left, and says that it is removed", async () => {
    await page.evaluate(() => {
      window.workbook.copyWithValues = () => Promise.reject(new Error("Excel went away."));
      window.workbook.unfinished = [{ id: "7", name: "Unfinished copy of Drying 3", mark: "Retort_unfinished_1_2_1", mayBeUnderWay: false }];
    });
    await tab("share").click();
    await copySheet("Drying 3");
    const notice = page.getByRole("region", { name: "Unfinished sheets" });
    await notice.getByText('The sheet "Unfinished copy of Drying 3" was begun and never finished').waitFor();
    await notice.getByRole("button", { name: 'Remove "Unfinished copy of Drying 3"' }).click();
    await notice.getByText('"Unfinished copy of Drying 3" is removed.').waitFor();
    expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toBe("Unfinished sheets");
    expect(await notice.getByRole("button").count()).toBe(0);
    expect(await page.evaluate(() => window.workbook.unfinished)).toEqual([]);
  });

  test("asks first before it removes a sheet on which something may stand that is the user's, and shows the sheet", async () => {
    await page.evaluate(() => {
      const { workbook } = window;
      workbook.copyWithValues = () => Promise.reject(new Error("Excel went away."));
      workbook.unfinished = [
        { id: "7", name: "Drying 3", mark: "Retort_unfinished_1_2_1", mayBeUnderWay: false },
        { id: "8", name: "Being made", mark: "Retort_unfinished_1_3_1", mayBeUnderWay: true },
      ];
      workbook.asksFirst = true;
    });
    await tab("share").click();
    await copySheet("Kiln 3");
    const notice = page.getByRole("region", { name: "Unfinished sheets" });
    await notice.getByRole("button", { name: 'Remove "Drying 3"' }).click();
    await notice.getByText('Not removed yet: something may stand on "Drying 3" that is yours.').waitFor();
    expect(await page.evaluate(() => [window.workbook.selected.sheet, window.workbook.unfinished.length])).toEqual(["Drying 3", 2]);
    expect(await notice.getByRole("button").allTextContents()).toEqual(['Remove "Drying 3" with all that is on it']);
    await notice.getByRole("button").click();
    await notice.getByText('"Drying 3" is removed.').waitFor();
  });

  test("says that somebody typed into the copy while it was made", async () => {
    await page.evaluate(() => (window.workbook.touched = true));
    await tab("share").click();
    await copySheet("Drying 3");
    await toldBy("share").waitFor();
    expect(await toldBy("share").textContent()).toContain('Something was typed into "Drying 3 values" while it was being made');
  });

  test("says so when the copy is gone", async () => {
    await tab("share").click();
    await copySheet("Drying 3");
    await toldBy("share").waitFor();
    await page.evaluate(() => {
      window.workbook.select = () => Promise.reject(new Error('There is no sheet "Drying 3 values". Choose another.'));
    });
    await page.getByRole("button", { name: "Show the copy" }).click();
    await alertOf("share").waitFor();
    expect(await alertOf("share").textContent()).toBe('There is no sheet "Drying 3 values". Choose another.');
  });

  test("shows a refusal in full and makes nothing", async () => {
    await tab("share").click();
    await page.locator("#share-sheet option", { hasText: "Kiln 3" }).waitFor({ state: "attached" });
    const before = await page.evaluate(() => Object.keys(window.workbook.sheets));
    await page.getByRole("button", { name: "Share as values" }).click();
    await alertOf("share").waitFor();
    expect(await alertOf("share").textContent()).toMatch(/^sheet: .*B22.* on "Kiln 3" is shown as #NAME\?/);
    expect(await page.evaluate(() => Object.keys(window.workbook.sheets))).toEqual(before);
  });
});

describe("a sheet sent as it is, and one that came back", () => {
  beforeEach(async () => {
    await tab("share").click();
    await page.locator("#share-sheet option", { hasText: "Kiln 3" }).waitFor({ state: "attached" });
  });

  test("says what a colleague would see, changes nothing, and names what is broken already", async () => {
    const before = await page.evaluate(() => JSON.stringify(window.workbook.sheets));
    await lookAsItIs("Kiln 3");
    await panel("share").getByText("Not yet: B22 is broken on your own machine. Enter it again below first.").waitFor();
    await panel("share")
      .getByText(/cells of "Kiln 3" call a function of Retort: D6, .* Your colleague first sees the values that stand there now\./)
      .waitFor();
    expect(await page.evaluate(() => JSON.stringify(window.workbook.sheets))).toBe(before);
  });

  test("enters again what it named, and nothing else", async () => {
    await lookForBroken("Kiln 3");
    await panel("share").getByText('1 cell of "Kiln 3" can be entered again: B22. No other cell is touched.').waitFor();
    const before = await page.evaluate(() => window.workbook.sheets["Kiln 3"]);
    await page.getByRole("button", { name: "Enter 1 formula again" }).click();
    await panel("share").getByText("Entered 1 formula again.").waitFor();
    const after = await page.evaluate(() => window.workbook.sheets["Kiln 3"]);
    expect({ ...after, B22: undefined }).toEqual({ ...before, B22: undefined });
    expect(await page.getByRole("button", { name: /^Enter .* again$/ }).count()).toBe(0);
    await lookForBroken("Kiln 3");
    await panel("share").getByText('No cell of "Kiln 3" has a Retort function that has to be entered again.').waitFor();
  });
});

// The host puts its own menu there: 34 by 32 px at most (Office task pane design guidelines).
test("keeps the top right corner clear for the host's menu", async () => {
  for (const id of TABS) {
    await tab(id).click();
    await page.evaluate(() => scrollTo(0, 0));
    const there = await page.evaluate(() => {
      const corner = { left: document.documentElement.clientWidth - 34, bottom: 32 };
      return [...document.querySelectorAll("button, input, select, a, h1, h2, h3, p, label")]
        .filter((one) => one.getClientRects().length > 0)
        .filter((one) => one.getBoundingClientRect().right > corner.left && one.getBoundingClientRect().top < corner.bottom)
        .map((one) => one.outerHTML);
    });
    expect(there).toEqual([]);
  }
});
