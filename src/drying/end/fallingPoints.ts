import { studentTQuantile } from "../../numerics/studentTQuantile";
import type { DryingPoint } from "../weighingSeries";
import { fallingRateFit, type FallingRateFit } from "./fallingRateFit";

/** Fewest weighings that carry a curve of three unknowns and still show how far they lie from it. */
export const FEWEST_POINTS = 4;

// A first point that would lie this far off by chance once in a hundred runs (two-sided) is taken to be another period's.
const STRAY_TAIL = 0.005;

/** The last weighings of a run, which carry the falling rate, and the curve through them. */
export interface FallingPoints {
  readonly points: readonly DryingPoint[];
  /** Undefined when there are too few points, or they do not settle on a curve. */
  readonly fit: FallingRateFit | undefined;
  /** The first of the falling rate that were left out, for they lie clearly off the curve of the others. */
  readonly strays: readonly DryingPoint[];
}

/**
 * Which of the last weighings carry the falling rate. First, everything is left out up to the end of the constant-rate
 * beginning (firstFallingPoint). Then, while more than four points are left, the first of them is left out too if the
 * others place it clearly off their own curve (t test of the left-out point, 1 %): it was weighed before the rate fell.
 * Its neighbour may be half as far off, too little to be seen and enough to mislead, so one more is left out with it.
 * @param deviations of every point, g; a scatter below them counts as them
 */
export function fallingPoints(all: readonly DryingPoint[], deviations: readonly number[]): FallingPoints {
  const fitFrom = (start: number): FallingRateFit | undefined => fallingRateFit(all.slice(start), deviations.slice(start));
  const fallsFrom = firstFallingPoint(all);
  if (all.length - fallsFrom < FEWEST_POINTS) return { points: all.slice(fallsFrom), fit: undefined, strays: [] };
  let first = fallsFrom;
  let fit = fitFrom(first);
  while (fit !== undefined && all.length - first > FEWEST_POINTS) {
    const without = fitFrom(first + 1);
    if (without === undefined || !isStray(fit, without)) break;
    first++;
    fit = without;
  }
  if (first > fallsFrom && all.length - first > FEWEST_POINTS) {
    first++;
    fit = fitFrom(first);
  }
  return { points: all.slice(first), fit, strays: all.slice(fallsFrom, first) };
}

function isStray(withPoint: FallingRateFit, without: FallingRateFit): boolean {
  const variance = Math.max(without.sumOfSquares / without.degrees, 1);
  const t = Math.sqrt(Math.max(0, withPoint.sumOfSquares - without.sumOfSquares) / variance);
  return t > studentTQuantile(STRAY_TAIL, without.degrees);
}

// An interval that loses at least this share of the fastest interval's rate belongs to the constant-rate beginning. Hand
// timing and rounding make constant rates differ by some per cent. Common practice, no source.
const CONSTANT_SHARE = 0.9;

// The last constant interval and the one in which the rate begins to fall.
const INTERVALS_TO_SKIP = 2;

/**
 * Index of the weighing from which the rate surely falls. After the last interval that loses mass nearly as fast as the
 * fastest one, the next may still begin at the constant rate, so the falling rate is counted from that one's end. A
 * single fast interval at the very start shows no constant rate: there it is the first weighing. Where the rate never falls
 * it is the last weighing.
 */
export function firstFallingPoint(points: readonly DryingPoint[]): number {
  const rates = points.slice(1).map((point, i) => rateBetween(points[i] as DryingPoint, point));
  const fastest = rates.reduce((largest, rate) => Math.max(largest, rate), -Infinity);
  let lastConstant = rates.length - 1;
  while (lastConstant > 0 && (rates[lastConstant] as number) < CONSTANT_SHARE * fastest) lastConstant--;
  return lastConstant <= 0 ? 0 : Math.min(lastConstant + INTERVALS_TO_SKIP, points.length - 1);
}

const rateBetween = (earlier: DryingPoint, later: DryingPoint): number => (earlier.grams - later.grams) / (later.minutes - earlier.minutes);
