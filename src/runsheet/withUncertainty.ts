// A mantissa of 9.95 and more rounds up to the next power of ten, so it counts as one already: 9.95 * 200 / 199 = 10.
const [ROUNDS_UP, FROM] = [200, 199] as const;
const PERCENT = 100;

/**
 * The text "34.801 % ± 0.010 %" of a share and its uncertainty, both fractions, as a cell formula without "=": uncertainty to
 * two figures, value to the same place. FIXED writes numbers the way the reader's own spreadsheet does.
 */
export function withUncertainty(share: string, uncertainty: string): string {
  const decimals = `1-INT(LOG10(${uncertainty}*${PERCENT * ROUNDS_UP}/${FROM}))`;
  const percent = (fraction: string): string => `FIXED(${PERCENT}*${fraction},${decimals},TRUE)`;
  return `${percent(share)}&" % ± "&${percent(uncertainty)}&" %"`;
}
