import { studentTQuantile } from "../../numerics/studentTQuantile";
import { roundingSlack } from "../../weighing/roundingSlack";
import { roundingVariance } from "../../weighing/roundingVariance";
import type { DryingPoint } from "../weighingSeries";
import type { FallingRateFit } from "./fallingRateFit";

/** The display step that a run is judged by. */
export interface BalanceStep {
  readonly grams: number;
  /** False where it was read off the last digit of the weighings. */
  readonly given: boolean;
  /** Standard deviation of repeated weighings, g, where it is known. */
  readonly repeatability?: number | undefined;
}

// The decimals of roundingSlack: below a nanogram everything is binary rounding.
const MOST_DECIMALS = 9;

/**
 * The step of the last decimal that any of the weighings shows, g: 0.01 for 10, 9.2 and 8.95. A balance steps by this or
 * by a small multiple of it, so it is the least noise to reckon with where the readability is not known.
 */
export function lastDigitStep(weights: readonly number[]): number {
  let decimals = 0;
  for (const grams of weights) {
    while (decimals < MOST_DECIMALS && Math.abs(grams - Number(grams.toFixed(decimals))) > roundingSlack / 2) decimals++;
  }
  return 1 / 10 ** decimals;
}

// At zeroing and at reading.
const ROUNDINGS = 2;
// Bounds of an evenly spread error to its standard deviation: GUM (JCGM 100:2008) 4.3.7.
const DEVIATION_PER_BOUND = 1 / Math.sqrt(3);

/**
 * Standard deviation of each weighing, g, as balance and clock alone would have it: sqrt((d / sqrt 6)^2 + s^2 + (a r / sqrt 3)^2)
 * for a step d, a repeatability s, time bounds a and a loss rate r, the roundings of the reading, the balance's own scatter and
 * the mass that leaves while the time is in doubt. Weighings taken while the mass falls fast so count for less.
 * @param readability display step, g
 * @param timing bounds of the error of each time, min; 0 for exact times
 * @param repeatability standard deviation of repeated weighings, g; 0 where it is not known
 */
export const readingDeviations = (points: readonly DryingPoint[], readability: number, timing = 0, repeatability = 0): number[] =>
  points.map((_, i) =>
    Math.hypot(Math.sqrt(roundingVariance(readability, ROUNDINGS)), repeatability, timing * DEVIATION_PER_BOUND * rateAbout(points, i)),
  );

/** Loss per minute between a point's neighbours, g/min; at an end, to its one neighbour. */
function rateAbout(points: readonly DryingPoint[], i: number): number {
  const before = points[Math.max(0, i - 1)] as DryingPoint;
  const after = points[Math.min(points.length - 1, i + 1)] as DryingPoint;
  return (before.grams - after.grams) / (after.minutes - before.minutes);
}

// 95 % two-sided: a normal deviate stays within 1.959964 (GUM, JCGM 100:2008, table G.1: 1.960).
const BEYOND = 0.025;
const NORMAL_FACTOR = 1.959964;

/** How well a value read off the curve is known. */
export interface EndUncertainty {
  readonly standard: number;
  /** Half the width of the interval that holds the truth in 95 of 100 runs. */
  readonly expanded: number;
}

/** The same with the half width of what else the truth may be off by: evenly spread bounds, a / sqrt 3 (GUM 4.3.7). */
export const widenedBy = (allowance: number, { standard, expanded }: EndUncertainty): EndUncertainty => ({
  standard: Math.hypot(standard, allowance * DEVIATION_PER_BOUND),
  expanded: expanded + allowance,
});

/** A value's slope to each unknown of the fit: final (g), water (g), ln(rate). */
export type Slopes = readonly [final: number, water: number, logRate: number];

/**
 * Uncertainty of a value that moves with the unknowns of a fit: u^2 = s C s with its slopes s and the fit's covariance C
 * (GUM, JCGM 100:2008, 5.2.2), from the balance (and clock) or from the scatter about the curve, whichever is larger: few
 * points may lie closer to a curve than the balance can know. The scatter of few points is itself poorly known, so its
 * 95 % factor is Student's.
 * @param fit to deviations in g, so that its covariance is the balance's own
 */
export function endUncertainty(fit: FallingRateFit, slopes: Slopes): EndUncertainty {
  let unit = 0;
  for (const [i, row] of fit.covariance.entries())
    for (const [j, value] of row.entries()) unit += (slopes[i] as number) * value * (slopes[j] as number);
  const balance = Math.sqrt(Math.max(0, unit));
  const scatter = Math.sqrt((Math.max(0, unit) * fit.sumOfSquares) / fit.degrees);
  return {
    standard: Math.max(balance, scatter),
    expanded: Math.max(NORMAL_FACTOR * balance, studentTQuantile(BEYOND, fit.degrees) * scatter),
  };
}
