import { roundingVariance } from "../weighing/roundingVariance";
import type { DryingPoint } from "./DryingPoint";

// Bounds of an evenly spread error to its standard deviation: GUM (JCGM 100:2008) 4.3.7.
const DEVIATION_PER_BOUND = 1 / Math.sqrt(3);

/**
 * Standard deviation of each weighing, g, as balance and clock alone would have it: the roundings of the reading, and the
 * mass that leaves while the time is in doubt. Weighings taken while the mass falls fast so count for less.
 * @param readability display step, g
 * @param timing bounds of the error of each time, min; 0 for exact times
 */
export const readingDeviations = (points: readonly DryingPoint[], readability: number, timing = 0): number[] =>
  points.map((_, i) => Math.hypot(Math.sqrt(roundingVariance(readability, 2)), timing * DEVIATION_PER_BOUND * rateAbout(points, i)));

/** Loss per minute between a point's neighbours, g/min; at an end, to its one neighbour. */
function rateAbout(points: readonly DryingPoint[], i: number): number {
  const before = points[Math.max(0, i - 1)] as DryingPoint;
  const after = points[Math.min(points.length - 1, i + 1)] as DryingPoint;
  return (before.grams - after.grams) / (after.minutes - before.minutes);
}
