import { uncertaintyAboveWeighing } from "../problems/confidenceProblems";
import { withoutRounding } from "../weighing/roundingSlack";
import { usualCoverage } from "./usualCoverage";

/** Two weighings compared. */
export interface ChangeVerdict {
  /** after - before, g. */
  readonly change: number;
  /** The largest change that the readings alone explain, g. */
  readonly limit: number;
  readonly verdict: "loss" | "gain" | "not significant";
}

/**
 * Whether a change between two weighings of one load is more than their readings explain: |change| > k sqrt(2) u.
 * Each weighing is taken as zeroed and read for itself.
 * @param before, after g
 * @param u standard uncertainty of one weighing, g
 * @param k coverage factor
 * @throws InputProblem when u is not below the first weighing
 */
export function changeVerdict(before: number, after: number, u: number, k = usualCoverage): ChangeVerdict {
  if (u >= before) throw uncertaintyAboveWeighing(u, before);
  const change = withoutRounding(after - before);
  const limit = k * Math.SQRT2 * u;
  const verdict = Math.abs(change) <= limit ? "not significant" : change < 0 ? "loss" : "gain";
  return { change, limit, verdict };
}
