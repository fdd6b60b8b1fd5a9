import { modelNeedsDry, modelNotSettled, tooFewForModel } from "../problems/dryingProblems";
import { bestModelFit } from "./bestModelFit";
import type { DryingModel } from "./DryingModel";
import type { DryingPoint } from "./DryingPoint";
import { errorsPassedOn } from "./errorsPassedOn";

/** A drying model fitted to a run. Masses are those of the sample alone. */
export interface DryingFit {
  readonly model: DryingModel;
  /** In the order of the model. */
  readonly parameters: readonly number[];
  /** Standard error of each. */
  readonly errors: readonly number[];
  /** The sample at MR = 0, g: as given, or fitted with its standard error. */
  readonly final: number;
  readonly finalError: number | undefined;
  /** Root of the sum of squared residuals over the degrees of freedom, g. */
  readonly scatter: number;
  readonly count: number;
  readonly degrees: number;
}

// One weighing to spare leaves a standard error that is anyone's guess; two is the least that shows misfit.
const FEWEST_TO_SPARE = 2;

/**
 * Least squares of sample = final + (first - final) MR(t - first time), all weighings counting alike.
 * @param points rising in time; the first sets where MR is 1
 * @param dry the sample at MR = 0, g; left out, it is fitted too
 * @throws InputProblem when the model needs a dry sample and none is given
 * @throws NoAnswer when the points are too few for the model or do not settle its parameters
 */
export function dryingFit(points: readonly DryingPoint[], model: DryingModel, dry?: number): DryingFit {
  if (dry === undefined && model.endsElsewhere) throw modelNeedsDry(model.name);
  const unknowns = model.parameters.length + (dry === undefined ? 1 : 0);
  const reference = model.startsAtOne ? 1 : 0;
  const fewest = unknowns + reference + FEWEST_TO_SPARE;
  if (points.length < fewest) throw tooFewForModel(points.length, model.name, unknowns, fewest);

  const fit = bestModelFit(points, model, dry);
  if (fit === undefined) throw modelNotSettled(model.name);
  const parameters = fit.parameters.slice(0, model.parameters.length);
  const final = dry ?? (fit.parameters.at(-1) as number);
  const ratios = points.map(({ minutes }) => model.ratio(parameters, minutes - (points[0]?.minutes ?? 0)));
  const errors = errorsPassedOn(fit, ratios, dry !== undefined);
  const unsettled = model.parameters.some(({ mayBeZero }, j) => mayBeZero !== true && !((errors[j] as number) < (parameters[j] as number)));
  if (unsettled) throw modelNotSettled(model.name);
  const degrees = points.length - reference - unknowns;
  return {
    model,
    parameters,
    errors: errors.slice(0, model.parameters.length),
    final,
    finalError: dry === undefined ? errors.at(-1) : undefined,
    scatter: Math.sqrt(fit.sumOfSquares / degrees),
    count: points.length,
    degrees,
  };
}
