import { InputProblem } from "./InputProblem";
import { withUnit } from "./inputProblems";

export const tooManyWeighIns = (interval: number, hours: number, weighIns: number, most: number): InputProblem =>
  new InputProblem(
    `interval: every ${withUnit(interval, "min")} for ${withUnit(hours, "h")} makes ${weighIns} weigh-ins, more than the ${most} of a run sheet. Take a longer interval.`,
  );

export const heatingRateMissing = (): InputProblem =>
  new InputProblem("heating rate: nothing here, though a kiln temperature is given. Give degrees Celsius per minute.");
