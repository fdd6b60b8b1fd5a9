import { curveFit, type CurveFit, type TriedCurve } from "../../numerics/curveFit";
import type { DryingPoint } from "../weighingSeries";
import type { Decay } from "./decays";

/** Final mass (g), water at the first point (g) and ln of the rate (1/min), which keeps the rate above 0. */
export type DecayUnknowns = readonly [final: number, water: number, logRate: number];

/**
 * Weighted least squares of m(t) = final + water decay(rate (t - first time)) over any intervals. All three unknowns are
 * fitted at once, since a logarithm of the water left would need the end that is sought.
 * @param points at least 4, in rising time
 * @param deviations standard deviation of each point, g
 * @param settled as of curveFit
 * @returns undefined when the points do not settle on one curve
 */
export function decayFit(
  points: readonly DryingPoint[],
  deviations: readonly number[],
  decay: Decay,
  start: DecayUnknowns,
  settled?: number,
): CurveFit | undefined {
  const from = points[0]?.minutes ?? 0;
  const span = (points.at(-1)?.minutes ?? 0) - from;
  const tryCurve = ([final = 0, water = 0, logRate = 0]: readonly number[]): TriedCurve => {
    const rate = Math.exp(logRate);
    const residuals: number[] = [];
    const slopes: number[][] = [];
    for (let i = 0; i < points.length; i++) {
      const { minutes, grams } = points[i] as DryingPoint;
      const elapsed = minutes - from;
      const [left, slope] = decay(rate * elapsed, elapsed / span);
      const weight = 1 / (deviations[i] as number);
      residuals.push((grams - final - water * left) * weight);
      slopes.push([weight, left * weight, water * slope * weight]);
    }
    return { residuals, slopes };
  };
  return curveFit(tryCurve, start, settled);
}
