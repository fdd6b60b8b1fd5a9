// How a run sheet stands on paper and on screen, by its own heights and widths.
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { SAMPLE_KINDS, type RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { HEIGHT } from "../../../src/runsheet/sheet/heights";
import { beginPages, blocksOnPageOne, pageFor, SCALE_PERCENT } from "../../../src/runsheet/sheet/pages";
import { cautionLine } from "../../../src/runsheet/words/cautions";
import { cellArea } from "../../../src/workbook/cellArea";
import { pixelsOf } from "../../../src/workbook/columnPixels";
import type { SheetPlan } from "../../../src/workbook/SheetPlan";
import { sheetStyles } from "../../../src/workbook/sheetStyles";

const usual: RunSheetOptions = { kind: "ashing", weighIns: 6, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 3 };
const every: RunSheetOptions[] = SAMPLE_KINDS.flatMap((kind) =>
  [3, 6, 8, 12, 60].flatMap((weighIns) =>
    [1, 3, 6].flatMap((replicates) => [false, true].map((panZeros) => ({ ...usual, kind, weighIns, replicates, panZeros, temperatures: panZeros }))),
  ),
);
every.push(...[3, 10, 60].map((weighIns): RunSheetOptions => ({ ...usual, kind: "balance", replicates: 1, weighIns })));
// Balances to 100, 10 and 1 µg.
for (const readability of [1e-4, 1e-5, 1e-6])
  every.push(...[4, 5, 6].map((replicates): RunSheetOptions => ({ ...usual, kind: "charring", replicates, readability })));
const MM_PER_POINT = 25.4 / 72;
// Points of the shorter of A4 (595 by 842) and Letter (612 by 792), margins of 7.6 mm, across 5.1 mm left and right, and 11.4 mm below taken off.
const PAPER = { upright: { wide: 595 - 43.2, high: 792 - 54 }, across: { wide: 792 - 28.8, high: 595 - 54 } };
const paperOf = ({ print }: SheetPlan) => (print?.landscape ? PAPER.across : PAPER.upright);
const pagePoints = (plan: SheetPlan): number => (paperOf(plan).high / SCALE_PERCENT) * 100;
const PIXELS_PER_POINT = 96 / 72;

const heightsOf = (plan: SheetPlan): number[] =>
  (plan.rowHeights ?? []).flatMap(({ from, to, height }) => Array.from({ length: to - from + 1 }, () => height));
const rowsWith = (plan: SheetPlan, is: (cell: SheetPlan["cells"][number]) => boolean): number[] => [
  ...new Set(plan.cells.filter(is).map(({ cell }) => (cellArea(cell)?.row ?? 0) + 1)),
];
const rowOf = (plan: SheetPlan, content: string): number => rowsWith(plan, (cell) => cell.content === content)[0] ?? 0;
const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);
const title = ({ kind, weighIns, replicates, panZeros, readability }: RunSheetOptions): string =>
  `${kind}, ${weighIns} rounds, ${replicates} samples, ${readability} g${panZeros ? ", with zeros and temperatures" : ""}`;

describe.each(every.map((options) => [title(options), options] as const))("A sheet of %s", (_, options) => {
  const plan = buildRunSheet(options);
  const heights = heightsOf(plan);
  const breaks = plan.print?.breaksBefore ?? [];
  const printed = cellArea(plan.print?.area ?? "");
  const lastPrinted = printed?.rows ?? 0;
  const pages = [1, ...breaks].map((from, index) => ({ from, to: (breaks[index] ?? lastPrinted + 1) - 1 }));

  it("prints its boxes at least 6 mm high and no text below 8 points", () => {
    const boxes = rowsWith(plan, ({ style }) => style?.startsWith("runBox") ?? false);
    expect(boxes.filter((row) => ((heights[row - 1] ?? 0) * MM_PER_POINT * SCALE_PERCENT) / 100 < 6)).toEqual([]);
    const sizes = plan.cells
      .filter(({ cell }) => (cellArea(cell)?.column ?? 0) < (printed?.columns ?? 0))
      .map(({ style }) => sheetStyles[style ?? "label"].size ?? 0);
    expect((Math.min(...sizes) * SCALE_PERCENT) / 100).toBeGreaterThanOrEqual(8);
  });

  it("has its cautions whole on page one", () => {
    const cautions = rowsWith(plan, ({ style }) => style === "runCaution");
    expect(cautions.length).toBeGreaterThan(3);
    expect(Math.max(...cautions)).toBeLessThan(breaks[0] ?? Infinity);
    expect(sum(heights.slice(0, (breaks[0] ?? 1) - 1))).toBeLessThanOrEqual(pagePoints(plan));
  });

  it("breaks its pages between blocks alone, each page no higher than the paper but where one block is", () => {
    const bands = rowsWith(plan, ({ style, content, cell }) => (style === "runBand" && content !== undefined && cell.startsWith("A")) || false);
    expect(breaks.filter((row) => !bands.includes(row))).toEqual([]);
    const repeated = sum(heights.slice(0, plan.print?.titleRows ?? 0));
    const tooHigh = pages.slice(1).filter(({ from, to }) => repeated + sum(heights.slice(from - 1, to)) > pagePoints(plan));
    // A block of its own that is higher than a page runs on.
    expect(tooHigh.filter(({ from, to }) => bands.filter((row) => row >= from && row <= to).length > 1)).toEqual([]);
  });

  it("prints what it shows without the workings, its first three rows on every page, and the number of each page", () => {
    expect(plan.print).toMatchObject({ titleRows: 3, footer: { centre: "&10Page &P of &N" } });
    expect(printed).toMatchObject({ row: 0, column: 0 });
    const vessels = rowOf(plan, "VESSELS");
    const isLeftOut = lastPrinted < heights.length;
    if (isLeftOut) expect(lastPrinted).toBe(vessels - 1);
    // Only where the list of vessels would stand on a page by itself.
    const lastPage = pages.at(-1) ?? { from: 1, to: 1 };
    const above = lastPage.from === 1 ? 0 : sum(heights.slice(0, plan.print?.titleRows ?? 0));
    const fits = above + sum(heights.slice(lastPage.from - 1)) <= pagePoints(plan);
    if (isLeftOut) expect(fits).toBe(false);
    const workings = plan.cells.filter(({ style }) => style === "runWorking" || style === "runWorkingHeading");
    expect(workings.filter(({ cell }) => (cellArea(cell)?.column ?? 0) < (printed?.columns ?? 0))).toEqual([]);
  });

  it("is no wider than its paper, across only where it has to be, and its curves are high enough to read", () => {
    const wide = (sum(plan.columnWidths.slice(0, printed?.columns).map(pixelsOf)) / PIXELS_PER_POINT / 100) * SCALE_PERCENT;
    expect(wide).toBeLessThanOrEqual(paperOf(plan).wide);
    expect(plan.print?.landscape === true).toBe(options.replicates > 3);
    const curves = rowOf(plan, "CURVES");
    const [last = curves] = plan.charts?.map(({ over }) => (cellArea(over)?.row ?? 0) + (cellArea(over)?.rows ?? 0)) ?? [];
    expect((sum(heights.slice(curves, last)) * MM_PER_POINT * SCALE_PERCENT) / 100).toBeGreaterThanOrEqual(45);
  });
});

describe("The number of pages", () => {
  const pagesOf = (options: Partial<RunSheetOptions>): number => (buildRunSheet({ ...usual, ...options }).print?.breaksBefore.length ?? 0) + 1;

  it.each([1, 2, 3])(
    "of a run of %i samples is two, but three where the bench alone takes more than one or leaves less than one for the rest",
    (replicates) => {
      // 8 rounds are the pane's usual.
      for (const weighIns of [3, 6, 8]) {
        for (const kind of ["drying", "charring", "salt", "staged"] as const)
          expect([kind, pagesOf({ kind, replicates, weighIns })]).toEqual([kind, 2]);
        for (const kind of ["ashing", "liquids"] as const) expect([kind, pagesOf({ kind, replicates, weighIns })]).toEqual([kind, 3]);
      }
    },
  );

  // Text of 8 points and boxes of 6 mm on the shorter of A4 and Letter: nothing can be smaller, and the curves have their least height.
  it.each([
    ["ashing", 3, 8, 1874.25],
    ["ashing", 1, 3, 1735.5],
    ["liquids", 3, 8, 1929],
    ["liquids", 1, 3, 1790.25],
  ] as const)(
    "of %s for %i samples of %i rounds cannot be two: it is %s points high, and two pages hold 1728",
    (kind, replicates, weighIns, high) => {
      const plan = buildRunSheet({ ...usual, kind, replicates, weighIns });
      const heights = heightsOf(plan);
      const [curves, vessels] = [rowOf(plan, "CURVES"), rowOf(plan, "VESSELS")];
      const least = heights.slice(0, vessels - 1).map((height, index) => (index + 1 > curves ? Math.min(height, HEIGHT.curve) : height));
      expect(sum(least)).toBeCloseTo(high, 9);
      const repeated = sum(heights.slice(0, plan.print?.titleRows ?? 0));
      expect(2 * pageFor(plan.columnWidths.slice(0, 9)).points - repeated).toBeCloseTo(1728, 0);
      expect(high).toBeGreaterThan(1728);
      expect(pagesOf({ kind, replicates, weighIns })).toBe(3);
    },
  );

  it("of a balance check is two", () => {
    for (const weighIns of [3, 6, 12]) expect(pagesOf({ kind: "balance", replicates: 1, weighIns })).toBe(2);
  });
});

describe("On a screen of 1366 by 768 with the pane open, up to three samples", () => {
  // A window of 768 pixels leaves about 500 for rows (an estimate); the pane takes 320 of 1366, the row numbers and bar about 50.
  const [HIGH, WIDE] = [500, 1366 - 320 - 50];

  it.each([1, 2, 3])("the width of %s samples is in view", (replicates) => {
    const plan = buildRunSheet({ ...usual, replicates });
    const area = cellArea(plan.print?.area ?? "");
    expect(sum(plan.columnWidths.slice(0, area?.columns).map(pixelsOf))).toBeLessThanOrEqual(WIDE);
  });

  it.each(["drying", "charring", "ashing"] as const)("a %s run's head, weighings, verdict and next box are in view together", (kind) => {
    const plan = buildRunSheet({ ...usual, kind });
    const heights = heightsOf(plan);
    const pixels = (from: number, to: number): number => sum(heights.slice(from - 1, to)) * PIXELS_PER_POINT;
    const [head, dry] = [pixels(1, plan.frozenRows), rowOf(plan, "Dry sample, g")];
    expect(plan.frozenRows).toBe(3);
    // From the very top down to the verdict on dryness, and below the frozen head each phase of its own.
    expect(pixels(1, dry)).toBeLessThanOrEqual(HIGH);
    expect(head + pixels(rowOf(plan, "1 DRYING"), dry)).toBeLessThanOrEqual(HIGH);
    for (const [phase, total] of [
      ["2 CHARRING: the fire", "Char, g"],
      ["3 ASHING: the fire", "Ash, g"],
    ] as const)
      // prettier-ignore
      if (rowOf(plan, phase) > 0) expect(head + pixels(rowOf(plan, phase), rowOf(plan, total))).toBeLessThanOrEqual(HIGH);
  });

  it("eight rounds still leave the table and its head in view", () => {
    const plan = buildRunSheet({ ...usual, weighIns: 8 });
    const heights = heightsOf(plan);
    const table = heights.slice(rowOf(plan, "1 DRYING") - 1, rowOf(plan, "Dry sample, g"));
    expect((sum(heights.slice(0, 3)) + sum(table)) * PIXELS_PER_POINT).toBeLessThanOrEqual(HIGH);
  });
});

describe("Cautions of a sheet that grew", () => {
  const header = (options: Partial<RunSheetOptions>): string | undefined =>
    buildRunSheet({ ...usual, weighIns: 8, cautionsAfter: "end", ...options }).print?.header;

  it("are told in one line at the top of page one once they stand on a later page, and not before", () => {
    expect(header({ kind: "drying", replicates: 1 })).toBeUndefined();
    for (const kind of SAMPLE_KINDS) expect([kind, header({ kind, weighIns: 40 })]).toEqual([kind, `&10${cautionLine[kind]}`]);
    expect(buildRunSheet({ ...usual, kind: "balance", replicates: 1, weighIns: 60, cautionsAfter: "notes" }).print?.header).toBe(
      `&10${cautionLine.balance}`,
    );
  });

  it.each(Object.entries(cautionLine))("%s: the line fits a page upright and names where the rest stands", (_, line) => {
    expect(line).toMatch(/^CAUTIONS stand on a later page: read them first\. /);
    expect(line.length).toBeLessThanOrEqual(140);
    // Begins with no figure, which would belong to the code of its size, and holds no other code.
    expect(line).not.toMatch(/&|^\d/);
  });

  it("need no line on a sheet that was made as it is", () => {
    expect(every.filter((options) => buildRunSheet(options).print?.header !== undefined)).toEqual([]);
  });
});

describe("pageFor(widths)", () => {
  it("is upright up to the width of A4, and across beyond it, by what the shorter of A4 and Letter holds", () => {
    // 5 pixels and 7 a character: 88 characters are 621 pixels.
    expect(pageFor([88])).toMatchObject({ landscape: false });
    expect(pageFor([140])).toMatchObject({ landscape: true });
    expect(pageFor([88]).points).toBeCloseTo((PAPER.upright.high / 0.82) * 0.99, 9);
    expect(pageFor([140]).points).toBeCloseTo((PAPER.across.high / 0.82) * 0.99, 9);
  });
});

const page = { landscape: false, points: 900 };

describe("blocksOnPageOne(page, before, blocks, cautions)", () => {
  const blocks = (...heights: number[]) => heights.map((height) => ({ height }));
  it("counts the blocks that fit with the cautions below them, and stops at the first that does not", () => {
    expect(blocksOnPageOne(page, 50, blocks(400, 400, 1), { height: 50 })).toBe(2);
    expect(blocksOnPageOne(page, 50, blocks(400, 401, 1), { height: 50 })).toBe(1);
    expect(blocksOnPageOne(page, 50, blocks(1600), { height: 50 })).toBe(0);
  });
});

describe("beginPages(page, before, repeated, blocks)", () => {
  const begun = (...heights: number[]) =>
    beginPages(
      page,
      100,
      50,
      heights.map((height) => ({ height })),
    );
  it("begins a page with each block that no longer fits, never with the first", () => {
    expect(begun(400, 400, 425, 425, 1, 850, 1700, 1)).toEqual([2, 4, 5, 6, 7]);
    expect(begun(801, 1)).toEqual([1]);
    expect(begun()).toEqual([]);
  });
});
