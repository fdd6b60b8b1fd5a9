import type { DryingFit } from "../../../src/drying/model/dryingFit";
import type { DryingPoint } from "../../../src/drying/weighingSeries";
import { inverseOfPositive } from "../../../src/numerics/inverseOfPositive";

/**
 * Standard errors of a fitted drying model by the law of propagation as it is written (GUM, JCGM 100:2008, 5.1): how an error
 * of 1 g in each reading moves every residual, and by that every unknown. It takes time that grows with the square of the
 * weighings, as DRYING.FIT once did.
 */
export function errorsByDefinition({ model, parameters, final, finalError, scatter, degrees }: DryingFit, points: readonly DryingPoint[]): number[] {
  const { minutes: from, grams: first } = points[0] as DryingPoint;
  const ratios = points.map(({ minutes }) => model.ratio(parameters, minutes - from));
  const slopes = points.map(({ minutes }, i) => {
    const row = model.slopes(parameters, minutes - from).map((slope) => (first - final) * slope);
    return finalError === undefined ? row : [...row, 1 - (ratios[i] as number)];
  });
  const unknowns = slopes[0]?.length ?? 0;
  const normal = Array.from({ length: unknowns }, (_, a) =>
    Array.from({ length: unknowns }, (_, b) => slopes.reduce((sum, row) => sum + (row[a] as number) * (row[b] as number), 0)),
  );
  const covariance = inverseOfPositive(normal) ?? [];
  const columns = ratios.map((_, reading) => ratios.map((ratio, i) => (i === reading ? 1 : 0) - (reading === 0 ? ratio : 0)));
  if (finalError === undefined) columns.push(ratios.map((ratio) => ratio - 1));
  let expected = 0;
  const squares = covariance.map(() => 0);
  for (const shift of columns) {
    const right = covariance.map((_, j) => slopes.reduce((sum, row, i) => sum + (row[j] as number) * (shift[i] as number), 0));
    const gain = covariance.map((row) => row.reduce((sum, value, j) => sum + value * (right[j] as number), 0));
    for (const [i, moved] of shift.entries())
      expected += (moved - (slopes[i] ?? []).reduce((sum, slope, j) => sum + slope * (gain[j] as number), 0)) ** 2;
    for (const [j, value] of gain.entries()) squares[j] = (squares[j] as number) + value ** 2;
  }
  const variance = (scatter ** 2 * degrees) / expected;
  return squares.map((square) => Math.sqrt(variance * square));
}
