import { balanceTooCoarse } from "../problems/constancyProblems";
import { constancySteps } from "./constancySteps";
import type { ConstancyRun } from "./ConstancyRun";

/**
 * The number, from 1, of the first weighing from which every later one is steady too; 0 while the sample is not steady,
 * which includes a run with fewer than two weighings or none early enough to compare with.
 * @throws InputProblem as constancySteps
 * @throws NoAnswer when the balance is too coarse for the limit at the newest weighing
 */
export function constantWeight(run: ConstancyRun): number {
  const steps = constancySteps(run);
  const newest = steps.at(-1);
  if (newest?.verdict === "balance too coarse") throw balanceTooCoarse(run.readability ?? 0, newest.limit ?? 0, newest.weighing);
  let unbroken = steps.length;
  while (unbroken > 0 && steps[unbroken - 1]?.verdict === "steady") unbroken--;
  return steps[unbroken]?.weighing ?? 0;
}
