/**
 * Which earlier weighing a weighing is compared with: its neighbour, or, when a least interval is set, the latest one
 * taken at least that long before. Undefined when there is none.
 * @param index of the weighing, from 0
 * @param times min, one a weighing; needed with an interval
 * @param interval min, 0 for none
 */
export function comparedWeighing(index: number, times: readonly number[] | undefined, interval: number): number | undefined {
  let earlier = index - 1;
  if (times !== undefined && interval > 0) {
    const latest = (times[index] as number) - interval + CLOCK_SLACK;
    while (earlier >= 0 && (times[earlier] as number) > latest) earlier--;
  }
  return earlier < 0 ? undefined : earlier;
}

// Minutes computed from clock times carry binary rounding: an interval of 60 min may read 59.9999999. Below a millisecond.
const CLOCK_SLACK = 1e-5;
