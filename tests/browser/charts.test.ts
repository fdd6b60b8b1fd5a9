// The curves that the pane draws for each kind of sheet; the runs are invented.
import axe from "axe-core";
import type { Frame } from "playwright-core";
import { checkOptions } from "../../src/runsheet/options/checkOptions";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import { placeOf } from "../../src/runsheet/expressions/formulaText";
import { balanceSheet } from "../../src/runsheet/sheet/BalanceSheet";
import type { SheetPlan } from "../../src/workbook/SheetPlan";
import { charring, filled, kiln, prunings, weighed } from "../runsheet/gathering/gatherable";
import { LocalWorkbook } from "./localWorkbook";
import { pageWorkbook } from "./pageWorkbook";
import { cutOff, scrolls } from "./seenOnPage";

jest.setTimeout(240_000);

let local: LocalWorkbook;
let pane: Frame;
beforeAll(async () => {
  local = await LocalWorkbook.open();
  pane = local.page.frames().find((frame) => frame.url().endsWith("pane.html")) ?? local.page.mainFrame();
  await pane.getByRole("tab", { name: "Run sheet" }).click();
});
afterAll(() => local?.close());

/** Puts a filled sheet into the workbook and waits until so many curves of it are drawn. */
async function shows(plan: SheetPlan, charts: number): Promise<string[]> {
  const name = await pageWorkbook(local.page, { name: "the local workbook", drawsCharts: false }).addSheet(plan);
  await local.settled();
  return drawn(name, charts);
}

async function drawn(name: string, charts: number): Promise<string[]> {
  await pane.getByText(`Weighings on sheet "${name}".`).waitFor();
  await pane.waitForFunction((wanted) => document.querySelectorAll("figure.chart canvas").length === wanted, charts);
  return pane.locator("figure.chart .plot").evaluateAll((plots) => plots.map((plot) => plot.getAttribute("aria-label") ?? ""));
}

/** Colours that are painted besides the background. */
const painted = (): Promise<number> =>
  pane
    .locator("figure.chart canvas")
    .last()
    .evaluate((canvas: HTMLCanvasElement) => {
      const pixels = canvas.getContext("2d")?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
      const colours = new Set<number>();
      for (let at = 0; at < pixels.length; at += 4)
        if (pixels[at + 3] === 255) colours.add(((pixels[at] ?? 0) << 16) | ((pixels[at + 1] ?? 0) << 8) | (pixels[at + 2] ?? 0));
      return colours.size;
    });

async function picture(name: string): Promise<void> {
  await pane.locator("figure.chart").last().scrollIntoViewIfNeeded();
  await local.picture(name);
}

const THREE: RunSheetOptions = { ...charring, kind: "ashing", replicates: 3, ashFirings: 2 };

test("char and ash of three samples stand beside their drying, told apart by dash, mark and colour, with a table of each", async () => {
  const labels = await shows(
    filled("Plum", THREE, (sheet) => weighed(sheet, [prunings(0.712, 0.03), prunings(0.74, 0.031), prunings(0.69, 0.032)])),
    2,
  );
  expect(labels[1]).toMatch(
    /^Firing: what is left, without its vessel, g, against minutes held so far; a firing without counts 1\. Sample 1, char: from 5\.76 g to 5\.76 g\./,
  );
  expect(await pane.locator("figure.chart").last().locator(".chart-key li").allTextContents()).toEqual([
    "Sample 1, char",
    "Sample 1, ash",
    "finished if the next falls in here",
    "Sample 2, char",
    "Sample 2, ash",
    "Sample 3, char",
    "Sample 3, ash",
  ]);
  expect(await painted()).toBeGreaterThan(3);
  expect(await pane.locator("figure.chart").last().locator("tbody tr").count()).toBeGreaterThanOrEqual(2);
  await picture("charts-firing");
});

test("a balance check's history is drawn between its lines", async () => {
  const options = { ...charring, kind: "balance", replicates: 1, weighIns: 10 } as const;
  const { round, rows, setup } = balanceSheet(checkOptions(options));
  const plan = buildRunSheet(options);
  const typed = new Map<string, number>([[placeOf(setup.value), 200]]);
  for (const [index, grams] of [200.01, 200, 200.02, 200.01, 200, 200.01, 200.06].entries()) {
    const at = round(rows.rounds.first + index);
    typed.set(placeOf(at.date), 46_340 + 7 * index).set(placeOf(at.reading), grams);
  }
  const cells = plan.cells.map((one) => (typed.has(one.cell) ? { ...one, content: typed.get(one.cell) ?? 0 } : one));
  const [label] = await shows({ ...plan, cells }, 1);
  expect(label).toMatch(/^Check weight: check weight, g, against round\. reading: from 200\.01 g to 200\.06 g\. .*mean: 200\.01571 g\./);
  await picture("charts-balance");
});

test("gathered runs are drawn sample by sample, with their median", async () => {
  for (const [index, loss] of [0.71, 0.72, 0.715].entries()) await shows(kiln(`Kiln run ${index}`, loss), 2);
  await pane.getByRole("button", { name: "Gather runs" }).click();
  const [label] = await drawn("Gathered runs", 1);
  expect(label).toMatch(/^Vapour by row: vapour, % of dry, against row of this sheet\. counted: from .* median: [\d.]+ %\./);
  await picture("charts-gathered");
});

test("the curves are accessible, fit the narrowest pane, and turn dark with the page", async () => {
  await local.page.emulateMedia({ colorScheme: "dark" });
  await picture("charts-gathered-dark");
  await pane.evaluate(axe.source);
  expect(await pane.evaluate(async () => (await window.axe.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`))).toEqual([]);
  await local.page.setViewportSize({ width: 320, height: 640 });
  // Drawn anew once the pane has its new width.
  await pane.waitForFunction(() => document.documentElement.scrollWidth <= innerWidth);
  expect(await pane.evaluate(cutOff)).toEqual([]);
  expect(await pane.evaluate(scrolls)).toMatchObject({ sideways: false });
  expect(await painted()).toBeGreaterThan(1);
  expect(local.complaints).toEqual([]);
});
