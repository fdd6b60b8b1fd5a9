import type { DryingFit } from "../../drying/dryingFit";
import type { Shown } from "../cellFunction";
import { settledFigures } from "./settledFigures";

const HEADINGS = ["Quantity", "Value", "Standard error", "Unit"] as const;

/** A fitted model as rows of quantity, value, standard error and unit. */
export function dryingFitTable({ model, parameters, errors, final, finalError, scatter, count, degrees }: DryingFit): readonly (readonly Shown[])[] {
  const given = finalError === undefined;
  return [
    HEADINGS,
    ...model.parameters.map(({ name, unit }, j) => [name, settledFigures(parameters[j] as number), settledFigures(errors[j] as number), unit]),
    [`Final sample, ${given ? "given" : "fitted"}`, settledFigures(final), given ? "" : settledFigures(finalError), "g"],
    ["Residual scatter s", settledFigures(scatter), "", "g"],
    ["Weighings", count, "", ""],
    ["Degrees of freedom", degrees, "", ""],
    [`Model: ${model.name}`, `${model.law}, t in min since the first weighing`, "", ""],
    ["Moisture ratio", "MR = (sample - final) / (first sample - final)", "", ""],
  ];
}
