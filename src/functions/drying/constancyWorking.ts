import { plainNumber } from "../../problems/quoted";
import type { ConstancyRun } from "../../weighing/ConstancyRun";
import type { ConstancyStep } from "../../weighing/ConstancyStep";
import { constancySteps } from "../../weighing/constancySteps";
import { criteriaLike } from "../../weighing/criteriaLike";
import { limitInForce } from "../../weighing/limitInForce";
import { inFigures } from "../inFigures";

/** A constant-weight answer line by line: the rule, every comparison, and the standards that use this limit. */
export function constancyWorking(run: ConstancyRun): readonly string[] {
  const steps = constancySteps(run);
  const criterion = run.criterion ?? "of last";
  const limit = limitInForce(criterion, run.limit, steps[0]?.sample ?? 0, run.readability);
  const apart = run.interval ? `, weighings at least ${plainNumber(run.interval)} min apart` : "";
  const standards = criteriaLike(criterion, limit).map(({ standard, mark }) => `${standard} (${mark})`);
  return [
    `constant when the change is at most ${plainNumber(limit)} (${criterion})${apart}`,
    ...steps.map(stepLine),
    ...(standards.length === 0 ? [] : [`this limit is used by ${standards.join("; ")}`]),
  ];
}

function stepLine({ weighing, sample, comparedWith, change, limit, verdict }: ConstancyStep): string {
  if (comparedWith === undefined || change === undefined || limit === undefined) return `weighing ${weighing}: ${inFigures(sample)} g, ${verdict}`;
  const arithmetic = `${inFigures(sample)} - ${inFigures(sample - change)} = ${inFigures(change)} g against ${comparedWith}`;
  return `weighing ${weighing}: ${arithmetic}; allowed ${inFigures(limit)} g: ${verdict}`;
}
