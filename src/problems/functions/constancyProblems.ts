import { InputProblem } from "../InputProblem";
import { NoAnswer } from "../NoAnswer";
import { SIZE_FIGURES, withUnit } from "../quoted";

export const weighingNotAboveVessel = (row: number, grams: number, vessel: number): InputProblem =>
  new InputProblem(
    "weights",
    `row ${row} holds ${withUnit(grams, "g")}, not more than vessel, ${withUnit(vessel, "g")}`,
    `Weigh with the vessel, or give "tared" as vessel.`,
  );

export const sampleGrew = (row: number, grams: number, first: number): InputProblem =>
  new InputProblem(
    "weights",
    `row ${row} holds ${withUnit(grams, "g")}, far above row 1, ${withUnit(first, "g")}`,
    "Check for a wrong cell, a slipped decimal or another vessel.",
  );

export const timesOfAnotherSize = (times: number, weights: number): InputProblem =>
  new InputProblem("times", `length ${times} does not fit weights, length ${weights}`, "Give ranges of one size.");

export const timeMissing = (row: number, grams: number): InputProblem =>
  new InputProblem("times", `row ${row} is blank, but weights holds ${withUnit(grams, "g")} there`, "Give the minutes of that weighing.");

export const timeNotLater = (row: number, minutes: number, before: number): InputProblem =>
  new InputProblem(
    "times",
    `row ${row} holds ${withUnit(minutes, "min")}, not later than row ${row - 1}, ${withUnit(before, "min")}`,
    "Give rising minutes.",
  );

const FROM_CLOCK_TIMES = "Give minutes since the start: (time - start) * 1440.";

export const timesLookLikeClock = (span: number): InputProblem =>
  new InputProblem("times", `the whole run lasts ${withUnit(span, "min", SIZE_FIGURES)}, which looks like clock times`, FROM_CLOCK_TIMES);

export const timeLooksLikeDate = (minutes: number): InputProblem =>
  new InputProblem("times", `row 1 holds ${withUnit(minutes, "min")}, which looks like a date`, FROM_CLOCK_TIMES);

export const timesNeeded = (because: string): InputProblem =>
  new InputProblem("times", `left out, blank or 0, but ${because} needs them`, "Give the minutes of each weighing.");

export const readabilityNeeded = (): InputProblem =>
  new InputProblem("readability", `left out, blank or 0, but the criterion "readability" counts display steps`, "Give the balance's step in grams.");

export const limitNeeded = (criterion: string, advice: string): InputProblem =>
  new InputProblem("limit", `left out, blank or 0, but "${criterion}" has no usual limit`, advice);

export const limitLooksLikePercent = (limit: number, unit: string, widest: number, advice: string): InputProblem =>
  new InputProblem("limit", `${withUnit(limit, unit)} is above ${withUnit(widest, unit)}, the widest in use`, advice);

export const limitTooWide = (limit: number, share: number, sample: number, advice: string): InputProblem =>
  new InputProblem(
    "limit",
    `${withUnit(limit, "g", SIZE_FIGURES)} is more than ${withUnit(100 * share, "%")} of the first sample, ${withUnit(sample, "g", SIZE_FIGURES)}`,
    advice,
  );

export const tooFewSteps = (steps: number, fewest: number): InputProblem =>
  new InputProblem(
    "limit",
    `${withUnit(steps, "steps")} is below ${fewest} display steps, which rounding alone can cause`,
    `Give a number of steps, ${fewest} or more.`,
  );

export const balanceTooCoarse = (readability: number, limit: number, weighing: number): NoAnswer =>
  new NoAnswer(
    "readability",
    `cannot be decided: the limit at weighing ${weighing}, ${withUnit(limit, "g", SIZE_FIGURES)}, is below two steps of ${withUnit(readability, "g")}`,
    "Take more sample or a finer balance.",
  );
