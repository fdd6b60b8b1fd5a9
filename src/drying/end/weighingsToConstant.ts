import { roundingSlack } from "../../weighing/roundingSlack";
import { allowedChange, fewestSteps, type ConstancyCriterion } from "../constantWeight/constancyCriteria";
import { curveAt, type FallingRateFit } from "./fallingRateFit";

/** When a run is to count as constant, and how it goes on. */
export interface RunAhead {
  readonly criterion: ConstancyCriterion;
  /** In the unit of the criterion. */
  readonly limit: number;
  /** First sample of the run, g. */
  readonly first: number;
  /** Time of the last weighing, min. */
  readonly last: number;
  /** Time between the weighings to come, min. */
  readonly interval: number;
  /** Display step, g; left out, the balance is taken as fine enough. */
  readonly readability?: number | undefined;
}

// Beyond this many the interval is far too short for the drying; the count would mean nothing.
const MOST_AHEAD = 200;

/**
 * How many more weighings, an interval apart, until two neighbours on the curve agree within the limit; a word where there is
 * no such number. Counted step by step, because most limits move with the sample, the loss so far or the hours.
 */
export function weighingsToConstant(fit: FallingRateFit, ahead: RunAhead): number | "too many" | "balance too coarse" {
  const { criterion, limit, first, last, interval, readability } = ahead;
  let before = curveAt(fit, last);
  for (let more = 1; more <= MOST_AHEAD; more++) {
    const newer = curveAt(fit, last + more * interval);
    const allowed = allowedChange(criterion, limit, { first, newer, minutes: interval }, readability);
    if (before - newer <= allowed + roundingSlack) return allowed < fewestSteps * (readability ?? 0) - roundingSlack ? "balance too coarse" : more;
    before = newer;
  }
  return "too many";
}
