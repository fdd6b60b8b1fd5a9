import { timeLooksLikeDate, timeMissing, timeNotLater, timesLookLikeClock } from "../problems/constancyProblems";

// Spreadsheet dates count days: 36526 is the first day of 2000. As minutes it would be a run that begins after 25 days.
const EARLIEST_DATE = 36526;
// Clock times are fractions of a day, so a run given in them seems to last less than a minute.
const SHORTEST_RUN = 1;

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
  const early = times.findIndex((time, index) => index > 0 && time <= (times[index - 1] as number));
  if (early !== -1) throw timeNotLater(early + 1, times[early] as number, times[early - 1] as number);
  if (weights.length > 1 && last - first < SHORTEST_RUN) throw timesLookLikeClock(last - first);
}
