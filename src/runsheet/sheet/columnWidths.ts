import type { CheckedOptions } from "../options/RunSheetOptions";
import { WATCH_CELLS } from "../formulas/slips/typedOver";
import { columns, FRAME_COLUMNS } from "./Columns";
import { decimalsOf } from "./massFormats";

// Characters, from drawings measured at 146, 88, 76, 64 and 182 pixels.
const LABELS = 20.15;
const CLOCKS = 11.86;
const BOXES = 10.15;
const RECKONED = 8.43;
const VERDICTS = 25.3;
const GAP = 2;
const WORKING_LABELS = 38;
const WORKINGS = 12;
// "-212." and a little air before the decimals of a fine balance, at 11 and 10 points.
const BEFORE_DECIMALS = 5;
// Six samples stand closer, so that they fit a page across: 68 and 58 pixels.
const MANY = 6;
const CLOSE = { boxes: 9, reckoned: 7.57 } as const;
// On a fine balance six fit only without the air, and with what such balances carry: 212.40001 g, with a sixth decimal 52.123456 g.
const FINE = 5;
const FINE_CLOSE = { boxes: 9.3, reckoned: 8.3 } as const;

/** Whether there are so many samples that their columns stand closer. */
export const areClose = (options: CheckedOptions): boolean => columns(options).slots >= MANY;

/** Width of each column from A on. */
export function columnWidths(options: CheckedOptions): number[] {
  const { slots } = columns(options);
  const decimals = decimalsOf(options.readability);
  const usual = areClose(options) ? CLOSE : { boxes: BOXES, reckoned: RECKONED };
  const wide = { boxes: Math.max(usual.boxes, decimals + BEFORE_DECIMALS), reckoned: Math.max(usual.reckoned, decimals + BEFORE_DECIMALS - 1) };
  const each = areClose(options) && decimals >= FINE ? FINE_CLOSE : wide;
  const [boxes, reckoned] = [new Array<number>(slots).fill(each.boxes), new Array<number>(slots).fill(each.reckoned)];
  // What is told of cells typed over stands beside its label, however few the samples.
  const workings = new Array<number>(Math.max(slots + 1 + FRAME_COLUMNS + (options.panZeros ? 2 * slots : 0), WATCH_CELLS)).fill(WORKINGS);
  return [LABELS, CLOCKS, ...boxes, ...reckoned, VERDICTS, GAP, WORKING_LABELS, ...workings];
}

/** Width of each column that is printed. */
export const printedWidths = (options: CheckedOptions): number[] => columnWidths(options).slice(0, columns(options).width);
