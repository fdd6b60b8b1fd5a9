/**
 * Points, in steps of the 0.75 that a screen's pixel is. A box printed at 82 % is 6.07 mm high, enough to write in by hand; 12.75 is what text
 * of 10 points needs.
 */
export const HEIGHT = {
  ...{ band: 15, fireBand: 25.5, box: 21, total: 18, caution: 12.75, result: 15.75, check: 12.75, line: 12.75, note: 12.75 },
  ...{ curve: 9.75, curveAtMost: 15 },
} as const;
export const HEAD = { title: 19.5, answer: 18, checks: 16.5, covers: 15, openly: 15 } as const;
