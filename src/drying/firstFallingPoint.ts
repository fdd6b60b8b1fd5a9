import type { DryingPoint } from "./DryingPoint";

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
