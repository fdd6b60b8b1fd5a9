import { pixelsOf, POINTS_PER_PIXEL } from "../../workbook/columnPixels";
import type { PrintPlan } from "../../workbook/SheetPlan";

// Points, 1/72 inch. A sheet is made for A4 and Letter alike, so that of each side the shorter counts: Letter is 612 by 792, A4 595 by 842.
const UPRIGHT = { wide: 595, high: 792 };
const ACROSS = { wide: 792, high: 595 };

/** Millimetres: 7.6 all round, 11.4 below for the page number. Points. */
export const MARGINS = { left: 21.6, right: 21.6, top: 21.6, bottom: 32.4, header: 10.8, footer: 14.4 } as const;

/** Across, where six samples need the width: 5.1 mm left and right, which every printer still reaches. */
const MARGINS_ACROSS = { ...MARGINS, left: 14.4, right: 14.4 } as const;
export const marginsOf = ({ landscape }: Pick<Page, "landscape">): PrintPlan["margins"] => (landscape ? MARGINS_ACROSS : MARGINS);

/** Text of 10 points prints at 8.2, a box of 21 at 17.2 points, 6.07 mm. */
export const SCALE_PERCENT = 82;

// What another program's rows may come out higher and its columns wider than asked for; LibreOffice's were true to 0.1 %, measured.
const SLACK = { high: 0.99, wide: 0.98 };

/** The paper that a sheet is made for. */
export interface Page {
  readonly landscape: boolean;
  /** What it holds from top to bottom, in points of the sheet. */
  readonly points: number;
}

/**
 * The page for columns of these widths: upright, or across where they are too wide for that. Nothing is printed smaller to fit: what is too wide
 * for a page across goes on beside it.
 * @param widths characters
 */
export function pageFor(widths: readonly number[]): Page {
  const wide = widths.reduce((sum, characters) => sum + pixelsOf(characters) * POINTS_PER_PIXEL, 0) * (SCALE_PERCENT / 100);
  const landscape = wide > (UPRIGHT.wide - MARGINS.left - MARGINS.right) * SLACK.wide;
  const { high } = landscape ? ACROSS : UPRIGHT;
  return { landscape, points: ((high - MARGINS.top - MARGINS.bottom) / (SCALE_PERCENT / 100)) * SLACK.high };
}

/** A block that should not be cut. */
export interface Measured {
  readonly height: number;
}

/**
 * How many of the bench's blocks stand on page one together with the cautions below them: as many as fit, none where not even the
 * first does.
 * @param before points above the first block
 */
export function blocksOnPageOne({ points }: Page, before: number, blocks: readonly Measured[], cautions: Measured): number {
  let used = before + cautions.height;
  let count = 0;
  for (const { height } of blocks) {
    used += height;
    if (used > points) break;
    count++;
  }
  return count;
}

/**
 * Which blocks begin a page: those that no longer fit below the ones before them. One higher than a page runs on where the printer breaks
 * it, and the next begins a page.
 * @param before points above the first block on page one
 * @param repeated points that every further page repeats
 */
export function beginPages({ points }: Page, before: number, repeated: number, blocks: readonly Measured[]): readonly number[] {
  let left = points - before;
  return blocks.flatMap(({ height }, index) => {
    const begins = index > 0 && height > left;
    left = (begins ? points - repeated : left) - height;
    return begins ? [index] : [];
  });
}
