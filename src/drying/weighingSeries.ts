import {
  sampleGrew,
  timeLooksLikeDate,
  timeMissing,
  timeNotLater,
  timesLookLikeClock,
  weighingNotAboveVessel,
} from "../problems/functions/constancyProblems";
import { clockSlack } from "./clock";
import { roundingSlack, withoutRounding } from "../weighing/roundingSlack";

/** One weighing of a drying sample. */
export interface DryingPoint {
  /** min */
  readonly minutes: number;
  /** Sample without vessel, g. */
  readonly grams: number;
}

// A dried sample that meets room air takes up some per cent (char 6 to 8 %, Lin et al.; wood about 12 %, common
// practice, no source), but a series starts moist: a tenth above the first weighing is a wrong cell or another vessel.
export const LARGEST_GAIN = 0.1;

/**
 * The sample alone at each weighing of a series, weight - vessel, g, cleared of binary rounding so that a limit met
 * exactly counts as met.
 * @param weights g, with the vessel
 * @param vessel g, 0 when the weighings are net
 * @throws InputProblem naming the row that is not above the vessel, or a tenth of the sample above row 1
 */
export function netSamples(weights: readonly number[], vessel: number): number[] {
  const samples = weights.map((grams, index) => {
    if (grams - vessel <= roundingSlack) throw weighingNotAboveVessel(index + 1, grams, vessel);
    return withoutRounding(grams - vessel);
  });
  const first = samples[0] ?? 0;
  const grown = samples.findIndex((sample) => sample > (1 + LARGEST_GAIN) * first + roundingSlack);
  if (grown !== -1) throw sampleGrew(grown + 1, weights[grown] as number, weights[0] as number);
  return samples;
}

// Spreadsheet dates count days: 36526 is the first day of 2000. As minutes it would be a run that begins after 25 days.
export const EARLIEST_DATE = 36526;
// Clock times are fractions of a day, so a run given in them seems to last less than a minute.
export const SHORTEST_RUN = 1;
// One clock time reckoned in two ways, min: binary rounding of minutes up to a spreadsheet date.
export const SAME_TIME = 1e-9;

/**
 * Holds the times of a series to rising minutes, one for each weighing.
 * @param weights g
 * @param times min; times after the last weighing are planned and play no part
 * @throws InputProblem for a missing or falling time, and for clock times and dates given as minutes
 */
export function checkTimes(weights: readonly number[], times: readonly number[]): void {
  const first = times[0] ?? 0;
  const last = times[weights.length - 1];
  if (last === undefined) throw timeMissing(times.length + 1, weights[times.length] as number);
  if (first >= EARLIEST_DATE) throw timeLooksLikeDate(first);
  const early = times.findIndex((time, index) => index > 0 && time - (times[index - 1] as number) <= SAME_TIME);
  if (early !== -1) throw timeNotLater(early + 1, times[early] as number, times[early - 1] as number);
  if (weights.length > 1 && last - first < SHORTEST_RUN - clockSlack) throw timesLookLikeClock(last - first);
}
