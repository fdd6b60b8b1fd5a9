import { InputProblem } from "../InputProblem";
import { plainNumber, quoted, SIZE_FIGURES, withUnit } from "../quoted";

export const driftTooLarge = (before: number, after: number, reading: number): InputProblem =>
  new InputProblem(
    "zeroAfter",
    `${withUnit(after, "g")} and zeroBefore, ${withUnit(before, "g")}, differ by over a tenth of reading, ${withUnit(reading, "g")}`,
    "Check for swapped cells.",
  );

export const timesNotAll = (missing: string): InputProblem =>
  new InputProblem(missing, "left out, blank or 0, but other times are given", "Give all three times, or none.");

export const startTimeUnclear = (): InputProblem =>
  new InputProblem("timeBefore", "0 or blank, while the others look like clock times or dates", "Give the time of the first zero reading.");

export const timeNotBetween = (time: number, before: number, after: number): InputProblem =>
  new InputProblem(
    "time",
    `${plainNumber(time)} is not between timeBefore, ${plainNumber(before)}, and timeAfter, ${plainNumber(after)}`,
    "Past midnight, add 1 to clock times.",
  );

export const blankAboveLoss = (blank: number, loss: number): InputProblem =>
  new InputProblem(
    "blankLoss",
    `${withUnit(blank, "g")} is a larger change than loss, ${withUnit(loss, "g")}`,
    "Check for swapped cells; give the change in grams, and u where it is scatter.",
  );

/** @param gain of the sample alone, g */
export const gainedBeyondScatter = (loss: number, gain: number): InputProblem =>
  new InputProblem(
    "loss",
    `${withUnit(loss, "g")} would make the sample gain ${withUnit(gain, "g", SIZE_FIGURES)}`,
    "Give before - after; give u where that is scatter.",
  );

/** Said of a net loss or gain beside its four weighings. */
export const NET_IS_SCATTER = "no more than four weighings scatter (4 u): neither a loss nor a gain is shown";

export const BOTH_GAINED = "vessel and sample together gained; the vessel alone gained more, so the sample lost";

/** @param argument "temperature", "pressure" or "humidity", in `unit` ("" for a fraction) */
export const outsideFormula = (
  argument: string,
  value: number,
  unit: string,
  [least, most]: readonly [number, number],
  formula: string,
  advice: string,
): InputProblem =>
  new InputProblem(
    argument,
    `${withUnit(value, unit)} is outside ${plainNumber(least)} to ${withUnit(most, unit)}, where the formula ${quoted(formula)} holds`,
    advice,
  );
