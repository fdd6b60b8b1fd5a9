import type { CurveFit } from "../numerics/curveFit";

/**
 * Standard errors of fitted parameters when the first weighing, and the dry one if given, are readings too: their errors
 * shift every residual at once, by MR and by 1 - MR. All readings are taken as equally uncertain, by as much as explains
 * the residuals. Law of propagation: GUM (JCGM 100:2008) 5.1, through the linearised fit.
 * @param ratios MR at each point, the first among them
 * @param dryWeighed true where the final mass was weighed and not fitted
 */
export function errorsPassedOn(fit: CurveFit, ratios: readonly number[], dryWeighed: boolean): number[] {
  const { covariance, tried, sumOfSquares } = fit;
  const readings = sharedErrors(ratios, dryWeighed);
  const gains = readings.map((shift) => responseTo(shift, fit));
  // Expected sum of squares of the residuals for readings of unit variance.
  let expected = 0;
  for (const [r, shift] of readings.entries()) {
    for (const [i, moved] of shift.entries()) {
      const followed = (tried.slopes[i] as readonly number[]).reduce((sum, slope, j) => sum + slope * (gains[r]?.[j] as number), 0);
      expected += (moved - followed) ** 2;
    }
  }
  const variance = sumOfSquares / expected;
  return covariance.map((_, j) => Math.sqrt(variance * gains.reduce((sum, gain) => sum + (gain[j] as number) ** 2, 0)));
}

/** One column a reading: how an error of 1 g in it moves each residual. */
function sharedErrors(ratios: readonly number[], dryWeighed: boolean): number[][] {
  const columns = ratios.map((_, reading) => ratios.map((ratio, i) => (i === reading ? 1 : 0) - (reading === 0 ? ratio : 0)));
  return dryWeighed ? [...columns, ratios.map((ratio) => ratio - 1)] : columns;
}

/** How the parameters follow a shift of the residuals. */
function responseTo(shift: readonly number[], { covariance, tried }: CurveFit): number[] {
  const right = covariance.map((_, j) => tried.slopes.reduce((sum, row, i) => sum + (row[j] as number) * (shift[i] as number), 0));
  return covariance.map((row) => row.reduce((sum, value, j) => sum + value * (right[j] as number), 0));
}
