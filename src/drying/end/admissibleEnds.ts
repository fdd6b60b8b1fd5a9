import { studentTQuantile } from "../../numerics/studentTQuantile";
import type { DryingPoint } from "../weighingSeries";
import { decayFit, type DecayUnknowns } from "./decayFit";
import { departures, type DecayPath } from "./decays";
import type { FallingRateFit } from "./fallingRateFit";

/** Between which ends a run may be heading, by every curve that its weighings allow. */
export interface AdmissibleEnds {
  /** g */
  readonly lowest: number;
  /** g */
  readonly highest: number;
  /** The least sum of squares that any of the curves leaves. */
  readonly least: number;
  /** By how much the sum of squares falls where the rate may slow down beyond one exponential; 0 or more. */
  readonly gainOfSlowing: number;
}

// One bound at a time: 95 % one-sided (GUM, JCGM 100:2008, table G.1: 1.645 for 90 % two-sided).
const BEYOND = 0.025;
const NORMAL_ONE_SIDED = 1.959964;

/**
 * The ends of all curves that the weighings do not exclude. Few weighings fit one exponential well whatever the drying is
 * really like: a slower part of the water shows in them late or never, and moves the end by many times what the scatter
 * says. So the curve is fitted again along the known departures from a steady rate (departures), and each that stays
 * within the scatter of the best counts, with its own uncertainty: the profile of the sum of squares over the shape
 * (Venzon and Moolgavkar, Appl. Stat. 37 (1988) 87, from memory).
 * @param fit the steady curve through points, to deviations in g
 * @param waterAtFirst water that the whole run began with, by that curve, g
 * @param tailIsSeen true where the weighings show a slower tail, which then may be a large one
 */
export function admissibleEnds(
  points: readonly DryingPoint[],
  deviations: readonly number[],
  fit: FallingRateFit,
  waterAtFirst: number,
  tailIsSeen = false,
): AdmissibleEnds {
  const tolerated = Math.max(NORMAL_ONE_SIDED ** 2, (studentTQuantile(BEYOND, fit.degrees) ** 2 * fit.sumOfSquares) / fit.degrees);
  let least = fit.sumOfSquares;
  let leastSlowing = fit.sumOfSquares;
  const walks = departures(waterAtFirst / fit.water, tailIsSeen).map((path) => {
    const ends = walked(path, points, deviations, fit, (squares) => squares > least + tolerated);
    for (const { squares } of ends) {
      least = Math.min(least, squares);
      if (path.slower) leastSlowing = Math.min(leastSlowing, squares);
    }
    return ends;
  });
  let [lowest, highest] = [Infinity, -Infinity];
  for (const { final, squares, variance } of walks.flatMap(between)) {
    const slack = least + tolerated - squares;
    if (slack < 0) continue;
    const reach = Math.sqrt(slack * variance);
    lowest = Math.min(lowest, final - reach);
    highest = Math.max(highest, final + reach);
  }
  return { lowest, highest, least, gainOfSlowing: leastSlowing <= least ? fit.sumOfSquares - leastSlowing : 0 };
}

/** Where the curve of one decay ends. */
interface ShapeEnd {
  readonly step: number;
  /** g */
  readonly final: number;
  readonly squares: number;
  /** Of final, for readings of the given deviations, g^2. */
  readonly variance: number;
}

// An end known to a thousandth of its own doubt is enough.
const SETTLED = 1e-5;

/** The ends along one path, the steady one first, until the misfit is past its least and too large. */
function walked(
  { steps, decayAt }: DecayPath,
  points: readonly DryingPoint[],
  deviations: readonly number[],
  fit: FallingRateFit,
  isTooLarge: (squares: number) => boolean,
): ShapeEnd[] {
  const ends: ShapeEnd[] = [{ step: steps[0] ?? 0, final: fit.final, squares: fit.sumOfSquares, variance: fit.covariance[0]?.[0] ?? 0 }];
  let start: DecayUnknowns = [fit.final, fit.water, Math.log(fit.rate)];
  for (const step of steps.slice(1)) {
    const tried = decayFit(points, deviations, decayAt(step), start, SETTLED);
    const [final = 0, water = 0, logRate = 0] = tried?.parameters ?? [];
    if (tried === undefined || !(water > 0)) break;
    const squares = tried.sumOfSquares;
    const before = ends.at(-1)?.squares ?? 0;
    ends.push({ step, final, squares, variance: tried.covariance[0]?.[0] ?? 0 });
    if (squares > before && isTooLarge(squares)) break;
    start = [final, water, logRate];
  }
  return ends;
}

// Interpolated ends between two that were fitted.
const PARTS = 6;

/** The ends with others between them: the squares by the parabola through three neighbours, all else by straight lines. */
function between(ends: readonly ShapeEnd[]): ShapeEnd[] {
  return ends.flatMap((end, i) => {
    const next = ends[i + 1];
    if (next === undefined) return [end];
    const third = ends[i + 2] ?? ends[i - 1];
    return Array.from({ length: PARTS }, (_, part) => {
      const share = part / PARTS;
      const mixed = (a: number, b: number): number => a + (b - a) * share;
      const step = mixed(end.step, next.step);
      const squares = mixed(end.squares, next.squares) + (third === undefined ? 0 : bend(end, next, third) * (step - end.step) * (step - next.step));
      return { step, final: mixed(end.final, next.final), squares, variance: mixed(end.variance, next.variance) };
    });
  });
}

/** Second divided difference of the squares. */
function bend(a: ShapeEnd, b: ShapeEnd, c: ShapeEnd): number {
  const slope = (from: ShapeEnd, to: ShapeEnd): number => (to.squares - from.squares) / (to.step - from.step);
  return (slope(b, c) - slope(a, b)) / (c.step - a.step);
}
