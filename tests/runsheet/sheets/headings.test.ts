// Whether the headings of every run sheet have room in their cells, on screen and on paper.
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { RUN_KINDS, type RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { cellArea } from "../../../src/workbook/cellArea";
import { pixelsOf } from "../../../src/workbook/columnPixels";
import { drawnLines } from "../../../src/workbook/drawnLines";
import type { SheetPlan } from "../../../src/workbook/SheetPlan";
import { sheetStyles } from "../../../src/workbook/sheetStyles";

/**
 * Thousandths of the size of a letter: Helvetica-Bold, Adobe Font Metrics of the core fonts of PDF, from memory, and the same as Liberation Sans
 * Bold measures, which draws as wide as Arial, the font of the local workbook's grid. Widest letters stand for those not listed.
 */
const WIDTHS: readonly (readonly [letters: string, width: number])[] = [
  [" ,.iIlj/", 278],
  ["():-ft", 333],
  ["r", 389],
  ["°", 400],
  ["zcaeksvxyJ0123456789", 556],
  ["±", 584],
  ["bdghnopquFLTZ?", 611],
  ["EPSVXY", 667],
  ["ABCDHKNRU", 722],
  ["wGOQ", 778],
  ["M", 833],
  ["m%", 889],
];
const WIDEST = 944;
const PIXELS_PER_POINT = 96 / 72;
// The engine draws no nearer to either edge of a cell; a half pixel is not seen.
const PADDING = 2 * 2 - 0.5;
const LINE = 12.75;

const pixelsOfText = (text: string, points: number): number =>
  [...text].reduce((so, letter) => so + (WIDTHS.find(([letters]) => letters.includes(letter))?.[1] ?? WIDEST), 0) *
  (points / 1000) *
  PIXELS_PER_POINT;

/** Lines that a text takes, a word that is too long by itself on as many as it needs. */
function linesOf(text: string, points: number, room: number): number {
  let [lines, line] = [1, ""];
  for (const word of text.split(" ")) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (pixelsOfText(longer, points) <= room) line = longer;
    else {
      lines += (line === "" ? 0 : 1) + Math.ceil(pixelsOfText(word, points) / room) - 1;
      line = word;
    }
  }
  return lines;
}

/** Headings that do not fit: a wrapped one in its cell, another in its own and the blank cells beside it. */
function clipped(plan: SheetPlan): string[] {
  const heights = (plan.rowHeights ?? []).flatMap(({ from, to, height }) => Array.from({ length: to - from + 1 }, () => height));
  const printed = cellArea(plan.print?.area ?? "")?.columns ?? 0;
  const filled = new Set(plan.cells.filter(({ content, formula }) => content !== undefined || formula !== undefined).map(({ cell }) => cell));
  const nameOf = new Map(plan.cells.map(({ cell }) => [JSON.stringify([cellArea(cell)?.row, cellArea(cell)?.column]), cell]));
  const width = (column: number): number => pixelsOf(plan.columnWidths[column] ?? 0);
  return plan.cells.flatMap(({ cell, content, style = "label" }) => {
    const { row, column } = cellArea(cell) ?? { row: 0, column: printed };
    if (!style.includes("Band") || typeof content !== "string" || column >= printed) return [];
    const { size = 0, wrap = false } = sheetStyles[style];
    const lines = Math.floor((heights[row] ?? 0) / LINE);
    if (wrap) {
      const onPaper = drawnLines(content, plan.columnWidths[column] ?? 0);
      return Math.max(onPaper, linesOf(content, size, width(column) - PADDING)) > lines ? [`${cell} ${content}`] : [];
    }
    let [room, next] = [width(column), column + 1];
    while (next < printed && !filled.has(nameOf.get(JSON.stringify([row, next])) ?? "")) room += width(next++);
    return pixelsOfText(content, size) > room - PADDING ? [`${cell} ${content}`] : [];
  });
}

const KINDS = RUN_KINDS.flatMap((kind) => (kind === "balance" ? [1] : [1, 2, 3, 4, 5, 6]).map((samples) => [kind, samples] as const));

test.each(KINDS)("%s of %i: no heading is cut, in °C or °F, on a coarse balance and a fine one, with every extra row", (kind, replicates) => {
  const extras = kind === "balance" ? {} : { panZeros: true, temperatures: true };
  for (const degrees of ["C", "F"] as const)
    for (const readability of [0.01, 1e-6]) {
      const options: RunSheetOptions = { kind, weighIns: 3, intervalMinutes: 30, readability, vessel: "tin", replicates, degrees, ...extras };
      expect([degrees, readability, clipped(buildRunSheet(options))]).toEqual([degrees, readability, []]);
    }
});

test("a heading that is too long for its column would be found", () => {
  const plan = buildRunSheet({ kind: "charring", weighIns: 3, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: 6 });
  const longer = plan.cells.map((cell) => (cell.content === "Sample, °C" ? { ...cell, content: "At sample, °C" } : cell));
  expect(clipped({ ...plan, cells: longer })).toHaveLength(1);
  const wider = plan.cells.map((cell) => (cell.content === "Sample 2" ? { ...cell, content: "The second sample" } : cell));
  expect(clipped({ ...plan, cells: wider }).length).toBeGreaterThan(0);
});
