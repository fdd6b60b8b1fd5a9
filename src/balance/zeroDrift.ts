import { driftTooLarge, startTimeUnclear, timeNotBetween, timesNotAll } from "../problems/functions/balanceProblems";

/** When the first zero, the weighing and the second zero were read, in one unit. */
export interface DriftTimes {
  readonly before: number | undefined;
  readonly at: number | undefined;
  readonly after: number | undefined;
}

// Zeros further apart than a tenth of the reading are another cell, not drift. Common practice, no source.
export const LARGEST_DRIFT = 0.1;
// Minutes in a week: a later time is a date, an earlier one below 1 a clock time.
export const WEEK = 10_080;

/**
 * A reading less the zero of the balance at that moment, on a straight line between the zeros read before and after:
 * reading - (zeroBefore + (zeroAfter - zeroBefore) share). Without times the weighing is taken as midway, which is also
 * the difference of an A-B-A weighing. A straight line, since two zeros tell no more; a steady drift cancels in it.
 * @param reading, zeroBefore, zeroAfter g
 * @throws InputProblem when the zeros are a tenth of the reading apart, or the times are incomplete or out of order
 */
export function zeroDrift(reading: number, zeroBefore: number, zeroAfter: number, times?: DriftTimes): number {
  if (Math.abs(zeroAfter - zeroBefore) > LARGEST_DRIFT * reading) throw driftTooLarge(zeroBefore, zeroAfter, reading);
  return reading - (zeroBefore + (zeroAfter - zeroBefore) * shareOfSpan(times));
}

/**
 * Where the weighing stands between the two zeros, from 0 to 1; a half without times.
 * @throws InputProblem when the times are incomplete or out of order
 */
export function shareOfSpan({ before, at, after }: DriftTimes = { before: undefined, at: undefined, after: undefined }): number {
  if (at === undefined && after === undefined && !before) return 1 / 2;
  if (before === undefined) throw timesNotAll("timeBefore");
  if (at === undefined) throw timesNotAll("time");
  if (after === undefined) throw timesNotAll("timeAfter");
  if (before === 0 && (after < 1 || after > WEEK)) throw startTimeUnclear();
  if (at < before || at > after || before === after) throw timeNotBetween(at, before, after);
  return (at - before) / (after - before);
}
