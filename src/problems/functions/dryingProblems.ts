import { InputProblem } from "../InputProblem";
import { NoAnswer } from "../NoAnswer";
import { counted, SIZE_FIGURES, withUnit } from "../quoted";

export const tooFewForEnd = (count: number, fewest: number): NoAnswer =>
  new NoAnswer("weights", `${weighings(count)} cannot show where drying ends; it takes ${fewest}`, "Weigh again.");

export const tooFewFalling = (count: number, row: number, fewest: number): NoAnswer =>
  new NoAnswer("weights", `the rate falls only since row ${row}, and ${weighings(count)} cannot show the end; it takes ${fewest}`, "Weigh again.");

/** @param readability display step, g; undefined where it was left out */
export const gainWhileDrying = (row: number, grams: number, lowestRow: number, lowest: number, readability: number | undefined): NoAnswer =>
  new NoAnswer(
    "weights",
    `row ${row}, ${withUnit(grams, "g")}, is above row ${lowestRow}, ${withUnit(lowest, "g")}` +
      (readability === undefined ? "" : `, by more than a balance of ${withUnit(readability, "g")} strays`),
    readability === undefined
      ? "If the balance explains that, give its readability; else look for regained moisture."
      : "Look for regained moisture or a wrong cell.",
  );

export const nothingLost = (row: number): NoAnswer =>
  new NoAnswer("weights", `nothing lost since row ${row}, so there is no curve to follow`, "Use CONSTANTWEIGHT to see whether it is dry.");

interface SmallLoss {
  /** g */
  readonly loss: number;
  /** Since this row, from 1. */
  readonly row: number;
  /** Display step, g. */
  readonly readability: number;
  /** False where the step is only the last digit of the weighings. */
  readonly given: boolean;
  /** As many steps as a loss must have to be seen. */
  readonly steps: number;
}

export const lossInsideNoise = ({ loss, row, readability, given, steps }: SmallLoss): NoAnswer =>
  new NoAnswer(
    "weights",
    `${withUnit(loss, "g", SIZE_FIGURES)} lost since row ${row} is below ${steps} steps of ${withUnit(readability, "g")}, ` +
      (given ? "inside the balance's noise" : "their last digit"),
    given ? "Use CONSTANTWEIGHT." : "If the balance is finer, give its readability; else use CONSTANTWEIGHT.",
  );

export const lostInOneInterval = (row: number): NoAnswer =>
  new NoAnswer("weights", `nearly all was lost between rows ${row} and ${row + 1}, so no rate shows`, "Weigh more often, or use CONSTANTWEIGHT.");

export const notSlowingDown = (row: number): NoAnswer =>
  new NoAnswer("weights", `since row ${row} the loss does not slow down clearly enough to show an end`, "Dry on and weigh again.");

export const endBelowNothing = (grams: number): NoAnswer =>
  new NoAnswer("weights", `the curve ends at ${withUnit(grams, "g", SIZE_FIGURES)}, below what any sample leaves`, "Dry on and weigh again.");

export const tooFewForModel = (count: number, model: string, unknowns: number, fewest: number): NoAnswer =>
  new NoAnswer("weights", `${weighings(count)} cannot carry the ${unknowns} unknowns of ${model}; it takes ${fewest}`, "Weigh more often.");

export const modelNeedsDry = (model: string): InputProblem =>
  new InputProblem(
    "dry",
    `left out, blank or 0, but ${model} has an end of its own, so none can be fitted beside it`,
    "Give the dry weighing, or take Henderson-Pabis.",
  );

export const dryNotBelowFirst = (dry: number, first: number): InputProblem =>
  new InputProblem("dry", `${withUnit(dry, "g")} is not below the first of weights, ${withUnit(first, "g")}`, "Check for swapped cells.");

export const dryNotAboveVessel = (dry: number, vessel: number): InputProblem =>
  new InputProblem("dry", `${withUnit(dry, "g")} is not more than vessel, ${withUnit(vessel, "g")}`, "Weigh it with the vessel, as the others.");

export const modelNotSettled = (model: string): NoAnswer =>
  new NoAnswer("model", `these weighings do not settle the unknowns of ${model}`, "Weigh on, or take a model with fewer.");

const weighings = (count: number): string => counted(count, "weighing");
