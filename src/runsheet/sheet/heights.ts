/** Points. A box printed at 82 % is 6.07 mm high, enough to write in by hand. */
export const HEIGHT = { band: 16.5, fireBand: 27, box: 21, total: 18, caution: 12.75, result: 16, check: 15, line: 15, note: 14 } as const;
export const HEAD = { title: 19.5, answer: 18, checks: 16.5, covers: 15, openly: 15 } as const;
