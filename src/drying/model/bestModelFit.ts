import { curveFit, type CurveFit, type TriedCurve } from "../../numerics/curveFit";
import { fallingRateStart } from "../end/fallingRateFit";
import type { DryingPoint } from "../weighingSeries";
import type { DryingModel } from "./dryingModels";

// How many of the starting points are followed to their end, best first.
const STARTS_FOLLOWED = 2;

/**
 * The lowest of the least-squares fits that begin at a model's most promising starts, the final mass last among its
 * parameters where none is given.
 * @param points the first sets where MR is 1
 * @param dry the sample at MR = 0, g
 */
export function bestModelFit(points: readonly DryingPoint[], model: DryingModel, dry: number | undefined): CurveFit | undefined {
  const { minutes: from, grams: first } = points[0] as DryingPoint;
  const tryCurve = (unknowns: readonly number[]): TriedCurve => {
    const final = dry ?? (unknowns.at(-1) as number);
    const residuals: number[] = [];
    const slopes: number[][] = [];
    for (const { minutes, grams } of points) {
      const ratio = model.ratio(unknowns, minutes - from);
      residuals.push(grams - final - (first - final) * ratio);
      const row = model.slopes(unknowns, minutes - from).map((slope) => (first - final) * slope);
      slopes.push(dry === undefined ? [...row, 1 - ratio] : row);
    }
    return { residuals, slopes };
  };
  const [, , logRate] = fallingRateStart(
    points,
    points.map(() => 1),
  ) ?? [0, 0, -Math.log((points.at(-1)?.minutes ?? 0) - from)];
  const starts = model.starts(Math.exp(logRate)).map((start) => (dry === undefined ? [...start, finalFor(points, model, start)] : start));
  return starts
    .map((start) => ({ start, squares: squaresOf(tryCurve(start)) }))
    .filter(({ squares }) => Number.isFinite(squares))
    .sort((a, b) => a.squares - b.squares)
    .slice(0, STARTS_FOLLOWED)
    .map(({ start }) => curveFit(tryCurve, start))
    .reduce((best, fit) => (best === undefined || (fit !== undefined && fit.sumOfSquares < best.sumOfSquares) ? fit : best), undefined);
}

/** The final mass that suits given parameters best: grams - first MR = final (1 - MR). */
function finalFor(points: readonly DryingPoint[], model: DryingModel, parameters: readonly number[]): number {
  const { minutes: from, grams: first } = points[0] as DryingPoint;
  let [above, below] = [0, 0];
  for (const { minutes, grams } of points) {
    const ratio = model.ratio(parameters, minutes - from);
    above += (1 - ratio) * (grams - first * ratio);
    below += (1 - ratio) ** 2;
  }
  return above / below;
}

const squaresOf = ({ residuals }: TriedCurve): number => residuals.reduce((sum, residual) => sum + residual * residual, 0);
