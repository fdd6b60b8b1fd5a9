import type { BlockName } from "../BlockName";
import { HEIGHT } from "./heights";
import { beginPages, type Measured, type Page } from "./pages";

/** A block where it stands, from its heading on. */
interface Standing extends Measured {
  readonly name: BlockName;
  readonly start: number;
}

/** How a sheet goes on its pages. */
export interface OnPaper {
  readonly page: Page;
  /** Rows that begin a page. */
  readonly breaks: readonly number[];
  /** The first row that is not printed; undefined where all are. */
  readonly notFrom: number | undefined;
  /** Points by which each row of the curves is higher than it has to be. */
  readonly spare: number;
}

// What vessels stand is no page's worth by itself: the list is printed where the pages that the run takes anyway have room for it.
const LIST: BlockName = "materials";
const CURVES: BlockName = "curves";
const PIXEL = 0.75;

/**
 * Breaks between blocks, as few as can be; what is left of the page of the curves goes to them.
 * @param before points above the first block
 * @param repeated points that every further page repeats
 * @param curveRows rows of the curves below their heading
 */
export function onPaper(page: Page, before: number, repeated: number, every: readonly Standing[], curveRows: number): OnPaper {
  const begun = beginPages(page, before, repeated, every);
  const isPrinted = every.at(-1)?.name !== LIST || !begun.includes(every.length - 1);
  const blocks = isPrinted ? every : every.slice(0, -1);
  const begins = begun.filter((index) => index < blocks.length);
  const at = blocks.findIndex(({ name }) => name === CURVES);
  const from = begins.filter((index) => index <= at).at(-1) ?? 0;
  const to = begins.find((index) => index > at) ?? blocks.length;
  const used = blocks.slice(from, to).reduce((sum, { height }) => sum + height, from === 0 ? before : repeated);
  const spare = Math.floor((page.points - used) / curveRows / PIXEL) * PIXEL;
  return {
    page,
    breaks: begins.map((index) => blocks[index]?.start ?? 0),
    notFrom: isPrinted ? undefined : every.at(-1)?.start,
    spare: Math.max(0, Math.min(HEIGHT.curveAtMost - HEIGHT.curve, spare)),
  };
}
