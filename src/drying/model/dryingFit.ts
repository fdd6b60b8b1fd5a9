import type { CurveFit } from "../../numerics/curveFit";
import { modelNeedsDry, modelNotSettled, tooFewForModel } from "../../problems/functions/dryingProblems";
import type { DryingPoint } from "../weighingSeries";
import { bestModelFit } from "./bestModelFit";
import type { DryingModel } from "./dryingModels";

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
 * Least squares of sample = final + (first - final) MR(t - first time), all weighings counting alike. Fitted to grams and
 * not to MR, whose divisor holds the unknown end, and never to logarithms, which would let the last weighings rule.
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

/**
 * Standard errors of fitted parameters when the first weighing, and the dry one if given, are readings too: their errors
 * shift every residual at once, by MR and by 1 - MR. All readings are taken as equally uncertain, by as much as explains
 * the residuals. Law of propagation: GUM (JCGM 100:2008) 5.1, through the linearised fit.
 * @param ratios MR at each point, the first among them
 * @param dryWeighed true where the final mass was weighed and not fitted
 */
function errorsPassedOn({ covariance, tried, sumOfSquares }: CurveFit, ratios: readonly number[], dryWeighed: boolean): number[] {
  const { slopes } = tried;
  // A later reading shifts its own residual alone, the first its own and every other by MR, the dry one every one by 1 - MR.
  const first = ratios.map((ratio, i) => (i === 0 ? 1 : 0) - ratio);
  const shared = dryWeighed ? [first, ratios.map((ratio) => ratio - 1)] : [first];
  const squares = covariance.map(() => 0);
  // Expected sum of squares of the residuals for readings of unit variance. Of a reading that shifts one residual, the fit
  // leaves 1 less its leverage, so that it takes no pass over the others.
  let expected = 0;
  const addUp = (gain: readonly number[], leaves: number): void => {
    expected += leaves;
    for (const [j, value] of gain.entries()) squares[j] = (squares[j] as number) + value ** 2;
  };
  for (const row of slopes.slice(1)) {
    const gain = applied(covariance, row);
    addUp(gain, 1 - product(row, gain));
  }
  for (const shift of shared) {
    const gain = applied(covariance, along(slopes, shift));
    addUp(
      gain,
      slopes.reduce((sum, row, i) => sum + ((shift[i] as number) - product(row, gain)) ** 2, 0),
    );
  }
  const variance = sumOfSquares / expected;
  return squares.map((square) => Math.sqrt(variance * square));
}

const product = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, value, j) => sum + value * (b[j] as number), 0);

const applied = (matrix: readonly (readonly number[])[], vector: readonly number[]): number[] => matrix.map((row) => product(row, vector));

/** The slopes of every residual, each times its shift, added up. */
function along(slopes: readonly (readonly number[])[], shift: readonly number[]): number[] {
  const sums = (slopes[0] ?? []).map(() => 0);
  for (const [i, row] of slopes.entries()) for (const [j, slope] of row.entries()) sums[j] = (sums[j] as number) + slope * (shift[i] as number);
  return sums;
}
