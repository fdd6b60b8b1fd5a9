import { decimalsOf } from "../sheet/massFormats";
import type { Sheet } from "../sheet/RunSheet";

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

/** Width of each column from A on. */
export function columnWidths({ options, columns: { slots } }: Sheet): number[] {
  const decimals = decimalsOf(options.readability);
  const boxes = new Array<number>(slots).fill(Math.max(BOXES, decimals + BEFORE_DECIMALS));
  const reckoned = new Array<number>(slots).fill(Math.max(RECKONED, decimals + BEFORE_DECIMALS - 1));
  const workings = new Array<number>(slots + 1).fill(WORKINGS);
  return [LABELS, CLOCKS, ...boxes, ...reckoned, VERDICTS, GAP, WORKING_LABELS, ...workings];
}
