import { curveFit, type TriedCurve } from "../numerics/curveFit";
import type { DryingPoint } from "./DryingPoint";
import { fallingRateStart } from "./fallingRateStart";

/** The curve final + water * exp(-rate * (t - first time)) through weighings of the falling-rate period. */
export interface FallingRateFit {
  /** Where the curve ends, g. */
  readonly final: number;
  /** Water still to go at the first of the points, g. */
  readonly water: number;
  /** 1/min */
  readonly rate: number;
  /** Time of the first of the points, min. */
  readonly from: number;
  /** Sum of squared residuals, each divided by its standard deviation. */
  readonly sumOfSquares: number;
  /** Points less the three unknowns. */
  readonly degrees: number;
  /** Of final (g), water (g) and ln(rate), for readings of the given deviations. */
  readonly covariance: readonly (readonly number[])[];
}

/** final, water and ln(rate): the rate is fitted by its logarithm, which keeps it above 0. */
const UNKNOWNS = 3;

/**
 * Weighted least squares for the falling rate over any intervals.
 * @param points at least 4, in rising time
 * @param deviations standard deviation of each point, g
 * @returns undefined when the points do not settle on one curve
 */
export function fallingRateFit(points: readonly DryingPoint[], deviations: readonly number[]): FallingRateFit | undefined {
  const from = points[0]?.minutes ?? 0;
  const tryCurve = ([final = 0, water = 0, logRate = 0]: readonly number[]): TriedCurve => {
    const rate = Math.exp(logRate);
    const residuals: number[] = [];
    const slopes: number[][] = [];
    for (const [i, { minutes, grams }] of points.entries()) {
      const elapsed = minutes - from;
      const left = Math.exp(-rate * elapsed);
      const weight = 1 / (deviations[i] as number);
      residuals.push((grams - final - water * left) * weight);
      slopes.push([weight, left * weight, -water * rate * elapsed * left * weight]);
    }
    return { residuals, slopes };
  };
  const start = fallingRateStart(points, deviations);
  const fit = start && curveFit(tryCurve, start);
  if (fit === undefined) return undefined;
  const [final, water, logRate] = fit.parameters as [number, number, number];
  const { sumOfSquares, covariance } = fit;
  return { final, water, rate: Math.exp(logRate), from, sumOfSquares, degrees: points.length - UNKNOWNS, covariance };
}
