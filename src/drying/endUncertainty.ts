import { studentTQuantile } from "../numerics/studentTQuantile";
import type { FallingRateFit } from "./fallingRateFit";

// 95 % two-sided: a normal deviate stays within 1.959964 (GUM, JCGM 100:2008, table G.1: 1.960).
const BEYOND = 0.025;
const NORMAL_FACTOR = 1.959964;

/** How well a value read off the curve is known. */
export interface EndUncertainty {
  readonly standard: number;
  /** Half the width of the interval that holds the truth in 95 of 100 runs. */
  readonly expanded: number;
}

/** A value's slope to each unknown of the fit: final (g), water (g), ln(rate). */
export type Slopes = readonly [final: number, water: number, logRate: number];

/**
 * Uncertainty of a value that moves with the unknowns of a fit: from the balance (and clock) or from the scatter about
 * the curve, whichever is larger. The scatter of few points is itself poorly known, so its 95 % factor is Student's.
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
