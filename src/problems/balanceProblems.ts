import { InputProblem } from "./InputProblem";
import { plainNumber, quoted, withUnit } from "./quoted";

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
    "Check for swapped cells; give the change in grams.",
  );

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
