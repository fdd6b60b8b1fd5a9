import type { DryingPoint } from "../weighingSeries";
import { decayFit } from "./decayFit";
import { steadyDecay } from "./decays";

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

/** The sample on the fitted curve at some minutes, g. */
export const curveAt = ({ final, water, rate, from }: FallingRateFit, minutes: number): number => final + water * Math.exp(-rate * (minutes - from));

/** final, water and ln(rate): the rate is fitted by its logarithm, which keeps it above 0. */
const UNKNOWNS = 3;

/**
 * Weighted least squares of m(t) = final + water exp(-rate (t - first time)) over any intervals: the law of Lewis (Ind. Eng.
 * Chem. 13 (1921) 427), in which the rate of loss falls with the water left. All three unknowns are fitted at once, since
 * a logarithm of the water left would need the end that is sought.
 * @param points at least 4, in rising time
 * @param deviations standard deviation of each point, g
 * @returns undefined when the points do not settle on one curve
 */
export function fallingRateFit(points: readonly DryingPoint[], deviations: readonly number[]): FallingRateFit | undefined {
  const from = points[0]?.minutes ?? 0;
  const start = fallingRateStart(points, deviations);
  const fit = start && decayFit(points, deviations, steadyDecay, start);
  if (fit === undefined) return undefined;
  const [final, water, logRate] = fit.parameters as [number, number, number];
  const { sumOfSquares, covariance } = fit;
  return { final, water, rate: Math.exp(logRate), from, sumOfSquares, degrees: points.length - UNKNOWNS, covariance };
}

// Rates tried, as the number of e-foldings over the run and over its shortest interval. Between them the curve runs from
// nearly straight to a fall that is over before the second weighing.
const FEWEST_FOLDINGS = 0.02;
const MOST_FOLDINGS = 8;
const TRIES = 24;

/**
 * Final mass, water at the first point (g) and ln of the rate (1/min) near the best curve: the best of a row of rates, each
 * with its own straight-line fit.
 * @param points in rising time, at least two
 * @param deviations standard deviation of each point, g
 * @returns undefined when no rate has the mass falling
 */
export function fallingRateStart(points: readonly DryingPoint[], deviations: readonly number[]): [number, number, number] | undefined {
  const from = points[0]?.minutes ?? 0;
  const span = (points.at(-1)?.minutes ?? 0) - from;
  let shortest = span;
  for (let i = 1; i < points.length; i++) shortest = Math.min(shortest, (points[i] as DryingPoint).minutes - (points[i - 1] as DryingPoint).minutes);
  const lowest = Math.log(FEWEST_FOLDINGS / span);
  const step = (Math.log(MOST_FOLDINGS / shortest) - lowest) / (TRIES - 1);
  let best: { squares: number; at: [number, number, number] } | undefined;
  for (let tried = 0; tried < TRIES; tried++) {
    const logRate = lowest + tried * step;
    const line = straightLine(points, deviations, from, Math.exp(logRate));
    if (line.water > 0 && (best === undefined || line.squares < best.squares))
      best = { squares: line.squares, at: [line.final, line.water, logRate] };
  }
  return best?.at;
}

/** Weighted straight line of grams against exp(-rate * elapsed). */
function straightLine(points: readonly DryingPoint[], deviations: readonly number[], from: number, rate: number) {
  let [weights, meanX, meanY] = [0, 0, 0];
  const xs = points.map(({ minutes }) => Math.exp(-rate * (minutes - from)));
  for (const [i, { grams }] of points.entries()) {
    const weight = (deviations[i] as number) ** -2;
    weights += weight;
    meanX += ((xs[i] as number) - meanX) * (weight / weights);
    meanY += (grams - meanY) * (weight / weights);
  }
  let [xx, xy, yy] = [0, 0, 0];
  for (const [i, { grams }] of points.entries()) {
    const weight = (deviations[i] as number) ** -2;
    const dx = (xs[i] as number) - meanX;
    const dy = grams - meanY;
    xx += weight * dx * dx;
    xy += weight * dx * dy;
    yy += weight * dy * dy;
  }
  const water = xy / xx;
  return { water, final: meanY - water * meanX, squares: yy - water * xy };
}
