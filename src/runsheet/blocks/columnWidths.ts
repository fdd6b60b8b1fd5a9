import { decimalsOf } from "../sheet/massFormats";
import type { RunSheet } from "../sheet/RunSheet";
import { LABEL } from "../sheet/sampleCells";
import type { WeighInColumn } from "../sheet/weighInColumns";
import type { BlockCell } from "./Block";

// Characters. Headings wrap, so a column is as wide as the longest word or verdict that stands in it.
const OF_COLUMN: Readonly<Partial<Record<WeighInColumn, number>>> = {
  number: 31,
  clock: 16,
  elapsed: 14,
  zeroBefore: 13,
  loaded: 19,
  zeroAfter: 13,
  room: 12,
  warmth: 13,
  sample: 17,
  change: 16,
  steady: 22,
  cold: 22,
  notes: 24,
};
const OTHER = 16;
// "Working, sample 6" on one line.
const WORKING = 19;
// "34. % ± 0. %" and the little more that bold takes; the decimals come twice.
const UNCERTAIN_TEXT = 15;
// Where the file format's own font is missing, the one in its place takes up to 8 pixels a letter, not 7; measured.
const WIDE_FONT = 8 / 7;
// A share of 100 g is known to two decimals of a percent more than its balance shows of a gram.
const MORE_DECIMALS = 2;

// "weight is not a number" and "check the ash weighing", which stand in for results.
const LONGEST_VERDICT = 22;

/** Width of each column from A on, wide enough for what stands in it. */
export function columnWidths({ options, columns: { width, printed, working } }: RunSheet, cells: readonly BlockCell[]): number[] {
  const text = UNCERTAIN_TEXT + 2 * (decimalsOf(options.readability) + MORE_DECIMALS);
  const labels = cells.filter(({ at, style }) => style === "label" && at.column === LABEL).map(({ content }) => String(content ?? "").length);
  return Array.from({ length: width + Math.max(working.length, options.replicates) }, (_, index) => {
    if (index >= width) return WORKING;
    const column = printed[index];
    const own = (column && OF_COLUMN[column]) ?? OTHER;
    if (index === LABEL) return Math.max(own, ...labels.map((length) => Math.ceil(length * WIDE_FONT) + 1));
    // Samples, and their mean where there is more than one.
    const isResult = index <= options.replicates + (options.replicates > 1 ? 1 : 0);
    return isResult ? Math.max(own, text, LONGEST_VERDICT) : own;
  });
}
