import type { DryingEnd } from "../../drying/DryingEnd";
import type { Shown } from "../cellFunction";
import { dryingEndVerdict } from "./dryingEndVerdict";
import { settledFigures } from "./settledFigures";
import { threePointWords } from "./threePointWords";

const LN_2 = Math.log(2);

/** The prediction as rows of label, value and unit, always fourteen. */
export function dryingEndTable(end: DryingEnd): readonly (readonly Shown[])[] {
  const { fit, uncertainty, waterUncertainty, weighingsLeft, threePoint } = end;
  return [
    ["Predicted final sample", settledFigures(fit.final), "g"],
    ["its standard uncertainty", settledFigures(uncertainty.standard), "g"],
    ["its 95 % uncertainty, plus or minus", settledFigures(uncertainty.expanded), "g"],
    ["Water still in the sample, by the curve", settledFigures(end.waterLeft), "g"],
    ["its standard uncertainty", settledFigures(waterUncertainty.standard), "g"],
    ["Rate constant", settledFigures(fit.rate), "1/min"],
    ["its standard uncertainty", settledFigures(end.rateUncertainty), "1/min"],
    ["Time in which the water halves", settledFigures(LN_2 / fit.rate), "min"],
    ["More weighings until constant", typeof weighingsLeft === "number" ? weighingsLeft : "", `every ${shortMinutes(end.interval)} min`],
    ["Weighings on the falling rate", end.points.length, `of ${end.made}`],
    ["Scatter about the curve", settledFigures(end.scatter), "g"],
    ["Three-point extrapolation", typeof threePoint === "string" ? "" : settledFigures(threePoint.final), "g"],
    ["Cross-check", threePointWords(end), ""],
    ["Verdict", dryingEndVerdict(end), ""],
  ];
}

// A tenth of a minute is as well as weighings are timed by hand.
const shortMinutes = (minutes: number): string => String(Math.round(minutes * 10) / 10);
