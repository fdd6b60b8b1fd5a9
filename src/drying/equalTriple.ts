import type { DryingPoint } from "./DryingPoint";

// Half a minute in half an hour: as well as a run is timed by hand. Common practice, no source.
const EQUAL_WITHIN = 0.02;

/**
 * The widest three points that end with the last one and have equal intervals between them, or undefined. Wide ones are
 * the least misled by rounding.
 */
export function equalTriple(points: readonly DryingPoint[]): readonly [DryingPoint, DryingPoint, DryingPoint] | undefined {
  const third = points.at(-1);
  if (third === undefined) return undefined;
  for (let start = 0; start < points.length - 2; start++) {
    for (let middle = start + 1; middle < points.length - 1; middle++) {
      const [first, second] = [points[start] as DryingPoint, points[middle] as DryingPoint];
      const [before, after] = [second.minutes - first.minutes, third.minutes - second.minutes];
      if (Math.abs(after - before) <= EQUAL_WITHIN * Math.min(before, after)) return [first, second, third];
    }
  }
  return undefined;
}
