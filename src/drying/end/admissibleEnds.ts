import { studentTQuantile } from "../../numerics/studentTQuantile";
import type { DryingPoint } from "../weighingSeries";
import { decayFit, type DecayUnknowns } from "./decayFit";
import { departures } from "./decays";
import type { FallingRateFit } from "./fallingRateFit";

/** Between which ends a run may be heading, by every curve that its weighings allow. */
export interface AdmissibleEnds {
  /** g */
  readonly lowest: number;
  /** g */
  readonly highest: number;
  /** By how much the sum of squares falls where the rate may slow down beyond one exponential; 0 or more. */
  readonly gainOfSlowing: number;
}

// One bound at a time: 95 % one-sided (GUM, JCGM 100:2008, table G.1: 1.645 for 90 % two-sided).
const BEYOND = 0.05;
const NORMAL_ONE_SIDED = 1.644854;
// An end known to a thousandth of its own doubt is enough.
const SETTLED = 1e-5;

/**
 * The ends of all curves that the weighings do not exclude. Few weighings fit one exponential well whatever the drying is
 * really like: a slower part of the water shows in them late or never, and moves the end by many times what the scatter
 * says. So the curve is fitted again along the known departures from a steady rate (departures), and each that stays
 * within the scatter of the best counts, with its own uncertainty: the profile of the sum of squares over the shape
 * (Venzon and Moolgavkar, Appl. Stat. 37 (1988) 87, from memory).
 * @param fit the steady curve through points, to deviations in g
 * @param waterAtFirst water that the whole run began with, by that curve, g
 */
export function admissibleEnds(
  points: readonly DryingPoint[],
  deviations: readonly number[],
  fit: FallingRateFit,
  waterAtFirst: number,
): AdmissibleEnds {
  const tolerated = Math.max(NORMAL_ONE_SIDED ** 2, (studentTQuantile(BEYOND, fit.degrees) ** 2 * fit.sumOfSquares) / fit.degrees);
  const ends = [{ final: fit.final, squares: fit.sumOfSquares, variance: fit.covariance[0]?.[0] ?? 0 }];
  let least = fit.sumOfSquares;
  let leastSlowing = fit.sumOfSquares;
  for (const { slower, decays } of departures(waterAtFirst / fit.water)) {
    let start: DecayUnknowns = [fit.final, fit.water, Math.log(fit.rate)];
    let before = Infinity;
    for (const decay of decays) {
      const tried = decayFit(points, deviations, decay, start, SETTLED);
      const [final = 0, water = 0, logRate = 0] = tried?.parameters ?? [];
      if (tried === undefined || !(water > 0)) break;
      const squares = tried.sumOfSquares;
      ends.push({ final, squares, variance: tried.covariance[0]?.[0] ?? 0 });
      least = Math.min(least, squares);
      if (slower) leastSlowing = Math.min(leastSlowing, squares);
      // Past its least, the misfit only grows along a path.
      if (squares > before && squares > least + tolerated) break;
      start = [final, water, logRate];
      before = squares;
    }
  }
  let [lowest, highest] = [Infinity, -Infinity];
  for (const { final, squares, variance } of ends) {
    const slack = least + tolerated - squares;
    if (slack < 0) continue;
    const reach = Math.sqrt(slack * variance);
    lowest = Math.min(lowest, final - reach);
    highest = Math.max(highest, final + reach);
  }
  return { lowest, highest, gainOfSlowing: leastSlowing <= least ? fit.sumOfSquares - leastSlowing : 0 };
}
