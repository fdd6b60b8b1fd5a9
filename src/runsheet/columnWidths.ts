import type { PlannedCell } from "../workbook/SheetPlan";
import type { Layout } from "./layout";
import { massFormat } from "./massFormat";
import type { RunSheetOptions } from "./RunSheetOptions";
import type { TableColumn } from "./tableColumns";

// Characters. Headings wrap, so a column is as wide as the longest word or verdict that stands in it.
const OF_COLUMN: Readonly<Partial<Record<TableColumn, number>>> = {
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
export function columnWidths(options: RunSheetOptions, { table }: Layout, cells: readonly PlannedCell[]): number[] {
  const text = UNCERTAIN_TEXT + 2 * (massFormat(options.readability).replace(/^0\.?/, "").length + MORE_DECIMALS);
  const labels = cells.filter(({ cell, style }) => style === "label" && /^A\d/.test(cell)).map(({ content }) => String(content ?? "").length);
  const working = Math.max(table.working.length, options.replicates);
  return Array.from({ length: table.width + working }, (_, index) => {
    if (index >= table.width) return WORKING;
    const column = table.printed[index];
    const own = (column && OF_COLUMN[column]) ?? OTHER;
    if (index === 0) return Math.max(own, ...labels.map((length) => Math.ceil(length * WIDE_FONT) + 1));
    // Samples, and their mean where there is more than one.
    const isResult = index <= options.replicates + (options.replicates > 1 ? 1 : 0);
    return isResult ? Math.max(own, text, LONGEST_VERDICT) : own;
  });
}
