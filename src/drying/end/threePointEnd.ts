import { clockSlack } from "../clock";
import type { DryingPoint } from "../weighingSeries";

/** Where three weighings at equal intervals point to, with the ratio of their losses. */
export interface ThreePointEnd {
  /** g */
  readonly final: number;
  /** Second loss over the first, above 0 and below 1. */
  readonly ratio: number;
  /** Uncertainty of the end over that of one weighing. */
  readonly gain: number;
}

/** Why three weighings point nowhere. */
export type ThreePointSilence = "gain" | "not slowing down" | "bend inside the balance's noise";

// Rounding makes the three-point end useless before the bend falls below this many display steps: the bend is the sum of
// four roundings, first, last and twice the middle.
const BEND_STEPS = 4;

/**
 * The end of a first-order curve from three weighings at equal intervals (Aitken's delta squared):
 * m3 - (m3 - m2)^2 / (m3 - 2 m2 + m1). Exact for a first-order curve, and quick to be misled by rounding.
 * Aitken, Proc. R. Soc. Edinburgh 46 (1926) 289, doi:10.1017/S0370164600022070.
 * @param weighings g
 * @param readability display step, g; 0 where unknown
 */
export function threePointEnd([first, second, third]: readonly [number, number, number], readability = 0): ThreePointEnd | ThreePointSilence {
  const bend = third - 2 * second + first;
  const ratio = (third - second) / (second - first);
  if (third > second || second > first) return "gain";
  if (!(ratio < 1)) return "not slowing down";
  if (bend < BEND_STEPS * readability) return "bend inside the balance's noise";
  // The end's slopes to the three weighings are share^2, -2 share (1 + share) and (1 + share)^2.
  const share = ratio / (1 - ratio);
  const gain = Math.hypot(share ** 2, 2 * share * (1 + share), (1 + share) ** 2);
  return { final: third - (third - second) ** 2 / bend, ratio, gain };
}

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
      if (Math.abs(after - before) <= EQUAL_WITHIN * Math.min(before, after) + clockSlack) return [first, second, third];
    }
  }
  return undefined;
}
