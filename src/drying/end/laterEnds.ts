import type { DryingPoint } from "../weighingSeries";
import { endUncertainty } from "./endUncertainty";
import { FEWEST_POINTS } from "./fallingPoints";
import { fallingRateFit } from "./fallingRateFit";

// Each stretch of last weighings is so much longer than the one before.
const LONGER = 1.25;

/**
 * Between which ends the steady curves through the last weighings alone lie, with their 95 % uncertainties: the last four,
 * five, seven and so on. For runs that no one decay follows, such as in an oven that was turned down half way: then only what
 * came after tells of the end.
 * @param deviations of the points, g
 */
export function laterEnds(points: readonly DryingPoint[], deviations: readonly number[]): { lowest: number; highest: number } {
  let [lowest, highest] = [Infinity, -Infinity];
  for (let length = FEWEST_POINTS; length < points.length; length = Math.ceil(length * LONGER)) {
    const fit = fallingRateFit(points.slice(-length), deviations.slice(-length));
    if (fit === undefined || !(fit.water > 0)) continue;
    const { expanded } = endUncertainty(fit, [1, 0, 0]);
    lowest = Math.min(lowest, fit.final - expanded);
    highest = Math.max(highest, fit.final + expanded);
  }
  return { lowest, highest };
}
