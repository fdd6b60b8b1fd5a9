import { endBelowNothing, notSlowingDown, tooFewForEnd } from "../problems/dryingProblems";
import { constancySteps } from "../weighing/constancySteps";
import { limitInForce } from "../weighing/limitInForce";
import { roundingSlack } from "../weighing/roundingSlack";
import { checkFalling, checkLoss, curveMissing, lossOver } from "./checkFalling";
import { checkNoGain } from "./checkNoGain";
import { curveAt } from "./curveAt";
import type { DryingEnd } from "./DryingEnd";
import type { DryingPoint } from "./DryingPoint";
import type { DryingRun } from "./DryingRun";
import { endUncertainty } from "./endUncertainty";
import { equalTriple } from "./equalTriple";
import { fallingPoints, FEWEST_POINTS } from "./fallingPoints";
import { lastDigitStep } from "./lastDigitStep";
import { readingDeviations } from "./readingDeviations";
import { threePointEnd } from "./threePointEnd";
import { weighingsToConstant } from "./weighingsToConstant";

// Beyond this the linear reckoning of the uncertainty no longer holds: the 95 % interval of the rate reaches e-fold.
const WIDEST_LOG_RATE = 1;

/**
 * Predicts where a falling-rate drying run ends.
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
  const step = { grams: readability ?? lastDigitStep(weights), given: readability !== undefined };
  checkNoGain(weights, step);
  checkLoss(all, 1, step);

  const deviations = readingDeviations(all, step.grams, run.timing);
  const { points, fit } = fallingPoints(all, deviations);
  const row = all.length - points.length + 1;
  checkFalling(points, row, step);
  const rate = fit && endUncertainty(fit, [0, 0, 1]);
  if (fit === undefined || rate === undefined || !(fit.water > 0) || !(rate.expanded < WIDEST_LOG_RATE)) throw curveMissing(points, row);
  const uncertainty = endUncertainty(fit, [1, 0, 0]);
  // An end known no better than by all that was lost so far is no prediction.
  if (!(uncertainty.expanded < lossOver(points))) throw notSlowingDown(row);
  if (fit.final <= roundingSlack) throw endBelowNothing(fit.final);

  const last = points.at(-1) as DryingPoint;
  const waterLeft = curveAt(fit, last.minutes) - fit.final;
  const excess = Math.sqrt(fit.sumOfSquares / fit.degrees);
  const interval = last.minutes - (points.at(-2) as DryingPoint).minutes;
  const ahead = { criterion, limit, first, last: last.minutes, interval, readability };
  return {
    fit,
    uncertainty,
    rateUncertainty: rate.standard * fit.rate,
    waterLeft,
    waterUncertainty: endUncertainty(fit, [0, waterLeft / fit.water, -waterLeft * fit.rate * (last.minutes - fit.from)]),
    scatter: excess * Math.min(...deviations),
    weighingDeviation: Math.max(1, excess) * Math.min(...deviations),
    excess: step.given ? excess : undefined,
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
