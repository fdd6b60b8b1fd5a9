import type { DryingPoint } from "./DryingPoint";

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
