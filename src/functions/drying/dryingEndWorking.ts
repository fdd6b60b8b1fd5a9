import { curveAt } from "../../drying/curveAt";
import type { DryingEnd } from "../../drying/DryingEnd";
import { inFigures } from "../inFigures";
import { dryingEndVerdict } from "./dryingEndVerdict";
import { settledFigures } from "./settledFigures";
import { threePointWords } from "./threePointWords";

/** A predicted end line by line: the curve, how far each weighing lies from it, and what follows. */
export function dryingEndWorking(end: DryingEnd): readonly string[] {
  const { fit, points, made, uncertainty } = end;
  const first = made - points.length + 1;
  return [
    `falling rate: weighings ${first} to ${made} of ${made}`,
    `curve: ${inFigures(fit.final)} + ${inFigures(fit.water)} * exp(-${inFigures(fit.rate)} * (t - ${inFigures(fit.from)})) g, t in min`,
    ...points.map(
      ({ minutes, grams }, i) =>
        `weighing ${first + i}, ${inFigures(minutes)} min: ${inFigures(grams)} g, on the curve ${inFigures(curveAt(fit, minutes))} g`,
    ),
    `scatter = ${inFigures(settledFigures(end.scatter))} g with ${points.length} - 3 = ${fit.degrees} to spare`,
    `predicted final sample = ${inFigures(fit.final)} g, standard uncertainty ${inFigures(uncertainty.standard)} g`,
    threePointWords(end),
    dryingEndVerdict(end),
  ];
}
