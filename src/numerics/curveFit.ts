import { inverseOfPositive } from "./inverseOfPositive";

/** A curve tried against readings, each row already divided by the standard deviation of its reading where these differ. */
export interface TriedCurve {
  /** Reading minus curve. */
  readonly residuals: readonly number[];
  /** One row a reading: how the curve there moves with each parameter. */
  readonly slopes: readonly (readonly number[])[];
}

/** The curve nearest to the readings. */
export interface CurveFit {
  readonly parameters: readonly number[];
  readonly sumOfSquares: number;
  /** Inverse of slopes' slopes: the parameters' covariance for readings of unit variance. */
  readonly covariance: readonly (readonly number[])[];
  readonly tried: TriedCurve;
}

// Damping is added to the diagonal as a share of it and moves by ten, as in the paper; where it begins and ends and how many
// steps are tried are choices of this program.
const FIRST_DAMPING = 1e-3;
const STRONGER = 10;
const MOST_DAMPING = 1e15;
const MOST_PASSES = 200;
// Steps below this share of a parameter are rounding.
const ROUNDING = 1e-11;

/**
 * Nonlinear least squares by Levenberg's and Marquardt's damped steps: Marquardt, J. SIAM 11 (1963) 431,
 * doi:10.1137/0111030, with his scaling by the diagonal.
 * @param tryCurve gives the curve at some parameters; a residual that is not finite counts as no fit there
 * @param start finite, near enough for the curve to have a slope in every parameter
 * @param settled share of each parameter below which a step is the last; left out, as far as a double goes
 * @returns undefined when the readings do not tell the parameters apart, or the steps do not settle
 */
export function curveFit(
  tryCurve: (parameters: readonly number[]) => TriedCurve,
  start: readonly number[],
  settled = ROUNDING,
): CurveFit | undefined {
  let parameters = start;
  let tried = tryCurve(parameters);
  let sumOfSquares = squaresOf(tried.residuals);
  let damping = FIRST_DAMPING;
  let normal = normalEquations(tried);
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    const step = dampedStep(normal, damping);
    if (step === undefined) return undefined;
    const next = parameters.map((value, j) => value + (step[j] as number));
    const isLast = step.every((change, j) => Math.abs(change) <= settled * Math.abs(next[j] as number));
    const nextTried = tryCurve(next);
    const nextSquares = squaresOf(nextTried.residuals);
    if (nextSquares < sumOfSquares) {
      [parameters, tried, sumOfSquares] = [next, nextTried, nextSquares];
      normal = normalEquations(tried);
      damping /= STRONGER;
    } else damping *= STRONGER;
    if (isLast || damping > MOST_DAMPING) {
      const covariance = inverseOfPositive(normal.matrix);
      return covariance && { parameters, sumOfSquares, covariance, tried };
    }
  }
  return undefined;
}

interface NormalEquations {
  readonly matrix: number[][];
  readonly right: number[];
}

function normalEquations({ residuals, slopes }: TriedCurve): NormalEquations {
  const count = slopes[0]?.length ?? 0;
  const matrix = Array.from({ length: count }, () => new Array<number>(count).fill(0));
  const right = new Array<number>(count).fill(0);
  for (let row = 0; row < slopes.length; row++) {
    const slope = slopes[row] as readonly number[];
    for (let i = 0; i < count; i++) {
      const line = matrix[i] as number[];
      const along = slope[i] as number;
      right[i] = (right[i] as number) + along * (residuals[row] as number);
      for (let j = 0; j <= i; j++) line[j] = (line[j] as number) + along * (slope[j] as number);
    }
  }
  for (let i = 0; i < count; i++) for (let j = 0; j < i; j++) (matrix[j] as number[])[i] = matrix[i]?.[j] as number;
  return { matrix, right };
}

function dampedStep({ matrix, right }: NormalEquations, damping: number): number[] | undefined {
  const inverse = inverseOfPositive(matrix.map((row, i) => row.map((value, j) => (i === j ? value * (1 + damping) : value))));
  return inverse?.map((row) => row.reduce((sum, value, j) => sum + value * (right[j] as number), 0));
}

function squaresOf(residuals: readonly number[]): number {
  let sum = 0;
  for (const residual of residuals) sum += residual * residual;
  return sum;
}
