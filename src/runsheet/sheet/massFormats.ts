import type { RunSheetOptions } from "../options/RunSheetOptions";

/** How the masses of a run are shown. */
export interface MassFormats {
  /** As the balance shows them. */
  readonly read: string;
  /** The middle of two zeros can lie half a step between two readings, so corrected masses show that half. */
  readonly corrected: string;
  /** Corrected on a sheet with pan zeros, else as read: what is reckoned from weighings. */
  readonly reckoned: string;
  /** Two figures more than the display shows, for an uncertainty. */
  readonly uncertainty: string;
}

const FIGURES_MORE = 100;

export function massFormats({ readability, panZeros }: RunSheetOptions): MassFormats {
  const [read, corrected] = [massFormat(readability), massFormat(readability / 2)];
  return { read, corrected, reckoned: panZeros ? corrected : read, uncertainty: massFormat(readability / FIGURES_MORE) };
}

// Binary rounding of a decimal step stays far below this.
const ROUNDING = 1e-9;
// Excel prints at most 30 decimals; no balance shows more than seven.
const MOST_DECIMALS = 7;

/** How many decimals a display step has: 0.005 g has three. */
export function decimalsOf(readability: number): number {
  let decimals = 0;
  while (decimals < MOST_DECIMALS && Math.abs(readability * 10 ** decimals - Math.round(readability * 10 ** decimals)) > ROUNDING) decimals++;
  return decimals;
}

/** The number format with as many decimals as a display step: 0.005 g gives "0.000". */
function massFormat(readability: number): string {
  const decimals = decimalsOf(readability);
  return decimals === 0 ? "0" : `0.${"0".repeat(decimals)}`;
}
