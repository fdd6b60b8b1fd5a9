import {
  gainWhileDrying,
  lossInsideNoise,
  lostInOneInterval,
  nothingLost,
  notSlowingDown,
  tooFewFalling,
} from "../../problems/functions/dryingProblems";
import { roundingSlack } from "../../weighing/roundingSlack";
import { roundingVariance } from "../../weighing/roundingVariance";
import type { DryingPoint } from "../weighingSeries";
import type { BalanceStep } from "./endUncertainty";
import { FEWEST_POINTS } from "./fallingPoints";

/**
 * What a balance may show as a rise at k = 2, g: 2 sqrt(2) sqrt(s^2 + 2 d^2 / 12), both readings zeroed and rounded, for a
 * repeatability s, or one step d where it is not known.
 */
const rise = ({ grams, repeatability = grams }: BalanceStep): number => 2 * Math.sqrt(2 * (repeatability ** 2 + roundingVariance(grams, 2)));

/**
 * Holds a run to what drying does: no weighing above any earlier one by more than the balance strays.
 * @param weights g, as typed
 * @throws NoAnswer naming the first row that gained
 */
export function checkNoGain(weights: readonly number[], step: BalanceStep): void {
  let lowest = 0;
  for (const [i, grams] of weights.entries()) {
    const least = weights[lowest] as number;
    if (grams - least > rise(step) + roundingSlack) throw gainWhileDrying(i + 1, grams, lowest + 1, least, step.given ? step.grams : undefined);
    if (grams <= least) lowest = i;
  }
}

// As the bend of the three-point end: four roundings.
const LEAST_LOSS_STEPS = 4;

/**
 * Holds weighings to a loss that a balance can see.
 * @param row of the first of them, from 1
 * @throws NoAnswer when they lost nothing, or no more than the balance's noise
 */
export function checkLoss(points: readonly DryingPoint[], row: number, step: BalanceStep): void {
  const loss = lossOver(points);
  if (loss <= roundingSlack) throw nothingLost(row);
  if (loss < LEAST_LOSS_STEPS * step.grams - roundingSlack)
    throw lossInsideNoise({ loss, row, readability: step.grams, given: step.given, steps: LEAST_LOSS_STEPS });
}

/**
 * Holds the weighings of the falling rate to what a curve needs.
 * @throws NoAnswer when the rate never falls, when they are too few, or as checkLoss
 */
export function checkFalling(points: readonly DryingPoint[], row: number, step: BalanceStep): void {
  if (points.length === 1) throw notSlowingDown(1);
  if (points.length < FEWEST_POINTS) throw tooFewFalling(points.length, row, FEWEST_POINTS);
  checkLoss(points, row, step);
}

// Share of the loss in one interval from which the others show no rate any more. Common practice, no source.
const NEARLY_ALL = 0.95;

/** Why weighings that pass checkFalling settle on no curve: over too soon, or not slowing down. */
export const curveMissing = (points: readonly DryingPoint[], row: number): Error =>
  lossOver(points.slice(0, 2)) >= NEARLY_ALL * lossOver(points) ? lostInOneInterval(row) : notSlowingDown(row);

/** Mass lost from the first point to the last, g. */
export const lossOver = (points: readonly DryingPoint[]): number => (points[0]?.grams ?? 0) - (points.at(-1)?.grams ?? 0);
