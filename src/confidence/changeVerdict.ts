import { uncertaintyAboveWeighing } from "../problems/confidenceProblems";
import { withoutRounding } from "../weighing/roundingSlack";
import { usualCoverage } from "./readingUncertainty";

/** Two weighings compared. */
export interface ChangeVerdict {
  /** after - before, g. */
  readonly change: number;
  /** The largest change that the readings alone explain, g. */
  readonly limit: number;
  readonly verdict: "loss" | "gain" | "not significant";
}

/**
 * Whether a change between two weighings of one load is more than their readings explain: |change| > k sqrt(2) u, the
 * uncertainty of a difference of two independent values (GUM, JCGM 100:2008, equation 10). Each weighing is taken as zeroed
 * and read for itself. The change is freed of binary rounding first, so that one of exactly the limit is not significant.
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
