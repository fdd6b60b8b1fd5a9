import { readabilityNeeded, timesNeeded } from "../problems/constancyProblems";
import { allowedChange } from "./allowedChange";
import { checkTimes } from "./checkTimes";
import { comparedWeighing } from "./comparedWeighing";
import { constancyVerdict } from "./constancyVerdict";
import type { ConstancyRun } from "./ConstancyRun";
import type { ConstancyStep } from "./ConstancyStep";
import { limitInForce } from "./limitInForce";
import { netSamples } from "./netSamples";
import { withoutRounding } from "./withoutRounding";

// 60 min in an hour.
const MINUTES_PER_HOUR = 60;

/**
 * Every weighing of a series with the weighing it is compared with, the change, the limit and the verdict.
 * @throws InputProblem when the weighings, times or limit cannot be those of a drying run, or a criterion lacks its input
 */
export function constancySteps(run: ConstancyRun): ConstancyStep[] {
  const { times, criterion = "of last", readability, interval = 0 } = run;
  const samples = netSamples(run.weights, run.vessel ?? 0);
  const first = samples[0] ?? 0;
  if (times !== undefined) checkTimes(run.weights, times);
  else if (criterion === "per hour") throw timesNeeded('the criterion "per hour"');
  else if (interval > 0) throw timesNeeded("interval");
  if (criterion === "readability" && readability === undefined) throw readabilityNeeded();
  const limitValue = limitInForce(criterion, run.limit, first, readability);

  return samples.map((sample, index) => {
    const weighing = index + 1;
    if (index === 0) return { weighing, sample, verdict: "first" };
    const compared = comparedWeighing(index, times, interval);
    if (compared === undefined) return { weighing, sample, verdict: "too soon to tell" };
    const hours = times === undefined ? 0 : ((times[index] as number) - (times[compared] as number)) / MINUTES_PER_HOUR;
    const limit = allowedChange(criterion, limitValue, { first, newer: sample, hours }, readability);
    const window = samples.slice(compared, weighing);
    const change = withoutRounding(sample - (samples[compared] as number));
    return { weighing, sample, comparedWith: compared + 1, change, limit, verdict: constancyVerdict({ criterion, window, limit, readability }) };
  });
}
