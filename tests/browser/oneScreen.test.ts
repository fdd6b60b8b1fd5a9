// What a screen of 1366 by 768 holds with the pane open: the run's head, and below it each table with its verdict and what it comes to.
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import type { RunKind } from "../../src/runsheet/options/RunSheetOptions";
import type { WorkbenchWindow } from "../../src/workbench/WorkbenchWindow";
import { cellArea } from "../../src/workbook/cellArea";
import { pixelsOf } from "../../src/workbook/columnPixels";
import type { SheetPlan } from "../../src/workbook/SheetPlan";
import { LocalWorkbook } from "./localWorkbook";

jest.setTimeout(240_000);

const DESK = { width: 1366, height: 768 };
// Pixels of the engine's own: its column letters, its row numbers, and the scroll bar that lies over the lowest row.
const [LETTERS, NUMBERS, SCROLL_BAR] = [20, 46, 12];
const PIXELS_PER_POINT = 96 / 72;

/** The first and the last row of each table that is weighed into, as labelled on the sheet. */
const TABLES: Readonly<Record<RunKind, readonly (readonly [from: string, to: string])[]>> = {
  drying: [["1 DRYING", "Dry sample, g"]],
  charring: [["1 DRYING", "Dry sample, g"], ["2 CHARRING: the fire", "Char, g"], ["3 AT THE END", "Empty vessel again, g"]], // prettier-ignore
  ashing: [["1 DRYING", "Dry sample, g"], ["2 CHARRING: the fire", "Char, g"], ["3 ASHING: the fire", "Ash, g"]], // prettier-ignore
  liquids: [["1 DRYING", "Dry sample, g"], ["2 CHARRING: the fire", "Char, g"]], // prettier-ignore
  staged: [["1 DRYING", "Dry sample, g"], ["2 STAGES: the fire", "Left at the end, g"]], // prettier-ignore
  salt: [["1 BEFORE HEATING", "Before heating, g"], ["2 HEATING: the fire", "Stayed after heating, g"]], // prettier-ignore
  balance: [["1 ROUNDS", "All rounds, g"]],
};

let local: LocalWorkbook;
beforeAll(async () => {
  local = await LocalWorkbook.open();
  await local.page.setViewportSize(DESK);
});
afterAll(() => local?.close());

const heightsOf = (plan: SheetPlan): number[] =>
  (plan.rowHeights ?? []).flatMap(({ from, to, height }) => Array.from({ length: to - from + 1 }, () => height * PIXELS_PER_POINT));
const rowOf = (plan: SheetPlan, content: string): number => (cellArea(plan.cells.find((one) => one.content === content)?.cell ?? "")?.row ?? -1) + 1;
const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);

/** What is left for the sheet's own rows and columns, with a box of the sheet selected, whose words stand below the grid. */
async function room(plan: SheetPlan): Promise<{ wide: number; high: number }> {
  await local.page.evaluate((given) => (window as WorkbenchWindow).retortWorkbench?.workbook.addSheet(given), plan);
  await local.settled();
  await local.page.waitForFunction((cell) => document.querySelector("#selected .address")?.textContent?.endsWith(`, ${cell}`), plan.startAt);
  const canvases = await local.page.evaluate(() =>
    [...document.querySelectorAll("#grid canvas")].map((one) => one.getBoundingClientRect()).map(({ width, height }) => ({ width, height })),
  );
  const [sheet] = canvases.sort((one, other) => other.height - one.height);
  return { wide: (sheet?.width ?? 0) - NUMBERS, high: (sheet?.height ?? 0) - LETTERS - SCROLL_BAR };
}

const KINDS = (Object.keys(TABLES) as RunKind[]).flatMap((kind) => (kind === "balance" ? [1] : [1, 2, 3]).map((samples) => [kind, samples] as const));

test.each(KINDS)(
  "a sheet of %s for %i is as wide as the screen, and every table stands below the head with what it comes to",
  async (kind, replicates) => {
    const plan = buildRunSheet({ kind, weighIns: 8, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates });
    const { wide, high } = await room(plan);
    const heights = heightsOf(plan);
    const printed = cellArea(plan.print?.area ?? "")?.columns ?? 0;
    expect(sum(plan.columnWidths.slice(0, printed).map(pixelsOf))).toBeLessThanOrEqual(wide);
    const head = sum(heights.slice(0, plan.frozenRows));
    for (const [from, to] of TABLES[kind]) {
      const [first, last] = [rowOf(plan, from), rowOf(plan, to)];
      expect([from, first > 0, last > first]).toEqual([from, true, true]);
      expect(head + sum(heights.slice(first - 1, last))).toBeLessThanOrEqual(high);
    }
    // From the very top down to the last of eight rounds and what they come to; more than that stands above those of a salt and of a balance.
    const [[, comesTo] = ["", ""]] = TABLES[kind];
    if (kind !== "salt" && kind !== "balance") expect(sum(heights.slice(0, rowOf(plan, comesTo)))).toBeLessThanOrEqual(high);
    expect(local.complaints).toEqual([]);
  },
);
