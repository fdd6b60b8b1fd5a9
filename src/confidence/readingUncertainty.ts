import { roundingVariance } from "../weighing/roundingVariance";

/** What is known of a balance, all in g. */
export interface BalanceSpread {
  /** Smallest display step. */
  readonly readability: number;
  /** Standard deviation of repeated weighings of one load, done the way the sample is weighed. 0 when not known. */
  readonly repeatability?: number | undefined;
  /** Largest deviation from linearity, the plus-or-minus figure of the balance. 0 when not known. */
  readonly linearity?: number | undefined;
  /** True for a mass by taring or by difference: rounding and linearity come in twice, at zero and at the load. */
  readonly tared?: boolean | undefined;
}

// Variance of a rectangular distribution between two bounds, half-width^2 / 3: GUM (JCGM 100:2008) 4.3.7.
const OF_HALF_WIDTH = 3;

/**
 * Standard uncertainty of a weighing, g: u^2 = s^2 + d^2 / 12 + linearity^2 / 3, the last two counted twice for a tared
 * mass (Eurachem/CITAC CG 4, example A2, counts linearity twice and the repeatability of the whole weighing once). The three
 * are added as variances because they are independent; the repeatability is not doubled, since it was measured on whole
 * weighings.
 */
export function readingUncertainty({ readability, repeatability = 0, linearity = 0, tared = false }: BalanceSpread): number {
  const readings = tared ? 2 : 1;
  return Math.sqrt(repeatability ** 2 + (roundingVariance(readability, readings) + (readings * linearity ** 2) / OF_HALF_WIDTH));
}

/** The coverage factor reported where none is asked for: about 95 % (GUM, JCGM 100:2008, 6.3.3). */
export const usualCoverage = 2;
