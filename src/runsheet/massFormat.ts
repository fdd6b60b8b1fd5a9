// Binary rounding of a decimal step stays far below this.
const ROUNDING = 1e-9;
// Excel prints at most 30 decimals; no balance shows more than seven.
const MOST_DECIMALS = 7;

/** The number format of a mass read on a balance, with as many decimals as its display step: 0.005 g gives "0.000". */
export function massFormat(readability: number): string {
  let decimals = 0;
  while (decimals < MOST_DECIMALS && Math.abs(readability * 10 ** decimals - Math.round(readability * 10 ** decimals)) > ROUNDING) decimals++;
  return decimals === 0 ? "0" : `0.${"0".repeat(decimals)}`;
}
