import { bracketedRoot } from "../numerics/bracketedRoot";
import { rangeProbability } from "../numerics/rangeProbability";
import { remembered } from "../numerics/remembered";

// ISO 5725-6 judges at 95 %.
const COVERED = 0.95;
const FACTORS_KEPT = 100;

/**
 * Critical-range factor f(n): the range of n results under repeatability exceeds f(n) times their standard deviation in
 * one case of twenty, P(range of n standard normal deviates <= f) = 0.95. ISO 5725-6 tabulates it to one decimal (from
 * memory); here it is integrated, so f(2) is 2.772, not 2.8, and no n is missing. Solved for the angle whose tangent is f, which
 * has a bracket where f has none.
 * @param n number of results, from 2
 */
export const criticalRangeFactor = remembered(FACTORS_KEPT, (n: number): number =>
  Math.tan(bracketedRoot((angle) => rangeProbability(Math.tan(angle), n) - COVERED, 0, Math.PI / 2)),
);
