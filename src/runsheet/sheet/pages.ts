// Letter is the shorter of the two sizes, so what fits it fits A4 as well: 11 inches of 72 points.
const LETTER_POINTS = 792;

/** Millimetres: 7.6 all round, 11.4 below for the page number. Points. */
export const MARGINS = { left: 21.6, right: 21.6, top: 21.6, bottom: 32.4, header: 10.8, footer: 14.4 } as const;

/** Text of 10 points prints at 8.2, a box of 21 at 17.2 points, 6.07 mm. */
export const SCALE_PERCENT = 82;

// What another program's rows may come out higher than asked for; LibreOffice's were true to 0.1 %, measured.
const SLACK = 0.99;

/** What one page holds, in points of the sheet. */
export const PAGE_POINTS = ((LETTER_POINTS - MARGINS.top - MARGINS.bottom) / (SCALE_PERCENT / 100)) * SLACK;

/** A block that should not be cut. */
export interface Measured {
  readonly height: number;
}

/**
 * How many of the bench's blocks stand on page one together with the cautions below them: as many as fit, none where not even the
 * first does.
 * @param before points above the first block
 */
export function blocksOnPageOne(before: number, blocks: readonly Measured[], cautions: Measured): number {
  let used = before + cautions.height;
  let count = 0;
  for (const { height } of blocks) {
    used += height;
    if (used > PAGE_POINTS) break;
    count++;
  }
  return count;
}

/**
 * Which of the blocks after page one begin a page: the first, and each that no longer fits below the ones before it. One higher than
 * a page runs on where the printer breaks it.
 * @param repeated points that every page repeats
 */
export function beginPages(repeated: number, blocks: readonly Measured[]): readonly number[] {
  let left = 0;
  return blocks.flatMap(({ height }, index) => {
    const begins = index === 0 || height > left;
    left = (begins ? PAGE_POINTS - repeated : left) - height;
    return begins ? [index] : [];
  });
}
