import { endBelowNothing, notSlowingDown, tooFewForEnd } from "../../problems/functions/dryingProblems";
import { roundingSlack } from "../../weighing/roundingSlack";
import { onTheMinute } from "../clock";
import { limitInForce, type ConstancyCriterion } from "../constantWeight/constancyCriteria";
import { constancySteps } from "../constantWeight/constancySteps";
import type { DryingPoint } from "../weighingSeries";
import { scattersTooMuch } from "./balanceScatter";
import { checkFalling, checkLoss, checkNoGain, curveMissing, lossOver } from "./checkFalling";
import { endUncertainty, lastDigitStep, readingDeviations, widenedBy, type EndUncertainty } from "./endUncertainty";
import { fallingPoints, FEWEST_POINTS } from "./fallingPoints";
import { curveAt, type FallingRateFit } from "./fallingRateFit";
import { type StatedEnd, statedEnd } from "./statedEnd";
import { equalTriple, threePointEnd, type ThreePointEnd, type ThreePointSilence } from "./threePointEnd";
import { weighingsToConstant } from "./weighingsToConstant";

/** A drying run so far. */
export interface DryingRun {
  /** min, rising, one a weighing */
  readonly times: readonly number[];
  /** g, with the vessel when it is given */
  readonly weights: readonly number[];
  /** g; left out or 0 when the weighings are net */
  readonly vessel?: number | undefined;
  /** Display step, g; left out, the last digit of the weighings counts as it. */
  readonly readability?: number | undefined;
  /** In the unit of the criterion; left out, 0.001 of the last weighing. */
  readonly limit?: number | undefined;
  readonly criterion?: ConstancyCriterion | undefined;
  /** Bounds of the error of each time, min; left out, times are exact. */
  readonly timing?: number | undefined;
  /** Standard deviation of repeated weighings, g; left out, the scatter is judged by one display step. */
  readonly repeatability?: number | undefined;
}

/** Where a drying run is heading. Every mass is that of the sample alone, g. */
export interface DryingEnd extends Omit<StatedEnd, "allowance"> {
  readonly fit: FallingRateFit;
  /** Of the rate, 1/min. */
  readonly rateUncertainty: number;
  /** Water still in the sample at the last weighing, by the curve. */
  readonly waterLeft: number;
  /** Of waterLeft, as curveUncertainty. */
  readonly waterCurveUncertainty: EndUncertainty;
  /** Of waterLeft, as uncertainty. */
  readonly waterUncertainty: EndUncertainty;
  /** Display step of the balance, or the last digit of the weighings, g. */
  readonly step: number;
  /** Standard deviation of the weighings about the curve; where timing is given, in the terms of the least doubtful. */
  readonly scatter: number;
  /** Standard deviation of one weighing, g: the scatter, or what balance and clock explain if that is more. */
  readonly weighingDeviation: number;
  /** True where the scatter is more than balance and clock explain; false where no readability is given to judge it by. */
  readonly scattersTooMuch: boolean;
  readonly points: readonly DryingPoint[];
  /** Weighings made. */
  readonly made: number;
  readonly criterion: ConstancyCriterion;
  readonly limit: number;
  /** The last interval, min. */
  readonly interval: number;
  /** 0 when the last weighing is steady already. */
  readonly weighingsLeft: number | "too many" | "balance too coarse";
  readonly threePoint: ThreePointEnd | ThreePointSilence | "intervals unequal";
}

// Beyond this the linear reckoning of the uncertainty no longer holds: the 95 % interval of the rate reaches e-fold.
const WIDEST_LOG_RATE = 1;

/**
 * Predicts where a falling-rate drying run ends: the end of the curve final + water exp(-rate t) through the weighings that
 * carry the falling rate (fallingPoints, fallingRateFit), with the uncertainty of that end by every other curve that they allow
 * (statedEnd). A prediction, never the dry weight, and refused where the run has not yet bent enough to show an end.
 * @throws InputProblem when times, weights, limit or readability cannot be those of a drying run
 * @throws NoAnswer when the weighings are too few, gain, stay inside the balance's noise or do not slow down
 */
export function endOfDrying(run: DryingRun): DryingEnd {
  const { times, weights, readability, criterion = "of last" } = run;
  const steps = constancySteps({ ...run, criterion });
  const first = steps[0]?.sample ?? 0;
  const limit = limitInForce(criterion, run.limit, first, readability);
  const all = steps.map(({ sample }, i) => ({ minutes: times[i] as number, grams: sample }));
  if (all.length < FEWEST_POINTS) throw tooFewForEnd(all.length, FEWEST_POINTS);
  const step = { grams: readability ?? lastDigitStep(weights), given: readability !== undefined, repeatability: run.repeatability };
  checkNoGain(weights, step);
  checkLoss(all, 1, step);

  const deviations = readingDeviations(all, step.grams, run.timing, run.repeatability);
  const { points, fit, strays } = fallingPoints(all, deviations);
  const row = all.length - points.length + 1;
  checkFalling(points, row, step);
  const rate = fit && endUncertainty(fit, [0, 0, 1]);
  if (fit === undefined || rate === undefined || !(fit.water > 0) || !(rate.expanded < WIDEST_LOG_RATE)) throw curveMissing(points, row);
  if (fit.final <= roundingSlack) throw endBelowNothing(fit.final);
  const last = points.at(-1) as DryingPoint;
  const deviation = Math.min(...deviations);
  const balance = { deviation, step: step.grams, repeatability: run.repeatability };
  const { allowance, ...stated } = statedEnd({ points, fit, strays }, deviations.slice(-points.length), first, balance);
  // An end known no better than by all that was lost so far is no prediction.
  if (!(stated.uncertainty.expanded < lossOver(points))) throw notSlowingDown(row);

  const waterLeft = curveAt(fit, last.minutes) - fit.final;
  const waterCurveUncertainty = endUncertainty(fit, [0, waterLeft / fit.water, -waterLeft * fit.rate * (last.minutes - fit.from)]);
  const interval = onTheMinute(last.minutes - (points.at(-2) as DryingPoint).minutes);
  const excess = Math.sqrt(fit.sumOfSquares / fit.degrees);
  const ahead = { criterion, limit, first, last: last.minutes, interval, readability };
  return {
    fit,
    ...stated,
    rateUncertainty: rate.standard * fit.rate,
    waterLeft,
    waterCurveUncertainty,
    waterUncertainty: widenedBy(allowance, waterCurveUncertainty),
    step: step.grams,
    scatter: excess * deviation,
    weighingDeviation: Math.max(1, excess) * deviation,
    scattersTooMuch: step.given && scattersTooMuch(fit, balance),
    points,
    made: all.length,
    criterion,
    limit,
    interval,
    weighingsLeft: steps.at(-1)?.verdict === "steady" ? 0 : weighingsToConstant(fit, ahead),
    threePoint: crossCheck(points, step.grams),
  };
}

function crossCheck(points: readonly DryingPoint[], step: number): DryingEnd["threePoint"] {
  const triple = equalTriple(points);
  return triple === undefined ? "intervals unequal" : threePointEnd([triple[0].grams, triple[1].grams, triple[2].grams], step);
}
