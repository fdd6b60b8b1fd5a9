import type { CheckedOptions } from "../options/RunSheetOptions";
import { columns } from "./Columns";
import { decimalsOf } from "./massFormats";
import { isTooWide } from "./pages";

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
// Where decimals still make them too wide, no wider than nine figures and a point, 68 and 62 pixels: a balance to 10 µg carries up to about
// 200 g, one to 1 µg tens of grams, so that whole grams and decimals are nine figures at the most.
const CLOSEST = { boxes: 9, reckoned: 8.14 } as const;

/** Width of each column from A on. */
export function columnWidths(options: CheckedOptions): number[] {
  const { slots } = columns(options);
  const workings = new Array<number>(slots + 1).fill(WORKINGS);
  return [...printedWidths(options), GAP, WORKING_LABELS, ...workings];
}

/** Width of each column that is printed. */
export function printedWidths(options: CheckedOptions): number[] {
  const { slots } = columns(options);
  const decimals = decimalsOf(options.readability);
  const usual = slots < MANY ? { boxes: BOXES, reckoned: RECKONED } : CLOSE;
  const [boxes, reckoned] = [Math.max(usual.boxes, decimals + BEFORE_DECIMALS), Math.max(usual.reckoned, decimals + BEFORE_DECIMALS - 1)];
  const wanted = withSamples(slots, boxes, reckoned);
  return isTooWide(wanted) ? withSamples(slots, Math.min(boxes, CLOSEST.boxes), Math.min(reckoned, CLOSEST.reckoned)) : wanted;
}

const withSamples = (slots: number, boxes: number, reckoned: number): number[] => [
  ...[LABELS, CLOCKS],
  ...new Array<number>(slots).fill(boxes),
  ...new Array<number>(slots).fill(reckoned),
  VERDICTS,
];
