import type { Read } from "../../inputs/Input";
import type { ConstancyRun } from "../../weighing/ConstancyRun";
import { checkSameRows } from "./checkSameRows";
import type { constancyInputs } from "./constancyInputs";

/**
 * The inputs as read, as a run to be judged.
 * @throws InputProblem when times and weights are ranges of different sizes
 */
export function constancyRunOf({ weights, times, ...rest }: Read<typeof constancyInputs>): ConstancyRun {
  if (times !== undefined) checkSameRows(times, weights);
  return { ...rest, weights: weights.values, times: times?.values };
}
