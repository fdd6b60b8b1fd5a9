import { dryingFit, type DryingFit } from "../../drying/model/dryingFit";
import { NO_FORM } from "../../problems/sharing/plainCellProblems";
import { type DryingModel, dryingModels } from "../../drying/model/dryingModels";
import { checkTimes, netSamples } from "../../drying/weighingSeries";
import { choice } from "../../inputs/choice";
import { rowCounted } from "../../inputs/column";
import type { Read } from "../../inputs/Input";
import { minutes } from "../../inputs/kinds/times";
import { mass } from "../../inputs/kinds/weighings";
import { optional } from "../../inputs/optional";
import { dryNotAboveVessel, dryNotBelowFirst } from "../../problems/functions/dryingProblems";
import { roundingSlack, withoutRounding } from "../../weighing/roundingSlack";
import { type Shown, tableFunction } from "../cellFunction";
import { DRYING_CAUTION } from "./dryingCaution";
import { checkSameRows, seriesVessel, seriesWeights } from "./seriesInputs";
import { settledFigures } from "./settledFigures";

/** Lewis's law goes by two names. */
const LEWIS = "Lewis";

const inputs = {
  times: rowCounted(minutes("Time of each weighing [min], rising; MR is 1 at the first.")),
  weights: seriesWeights,
  model: choice('Drying model: "Newton" (or "Lewis"), "Page", "modified Page", "Henderson-Pabis", "logarithmic", "two-term".', [
    ...dryingModels.map(({ name }) => name),
    LEWIS,
  ]),
  vessel: seriesVessel,
  dry: optional(mass("Weighing at constant weight [g], with the vessel if weights are; MR is 0 there."), "it is fitted too"),
};

function fitOf({ times, weights, model, vessel = 0, dry }: Read<typeof inputs>): DryingFit {
  checkSameRows(times, weights);
  checkTimes(weights.values, times.values);
  const samples = netSamples(weights.values, vessel);
  if (dry !== undefined && dry - vessel <= roundingSlack) throw dryNotAboveVessel(dry, vessel);
  if (dry !== undefined && dry >= (weights.values[0] as number)) throw dryNotBelowFirst(dry, weights.values[0] as number);
  const points = samples.map((grams, i) => ({ minutes: times.values[i] as number, grams }));
  const named = model === LEWIS ? "Newton" : model;
  const law = dryingModels.find(({ name }) => name === named) as DryingModel;
  return dryingFit(points, law, dry === undefined ? undefined : withoutRounding(dry - vessel));
}

const HEADINGS = ["Quantity", "Value", "Standard error", "Unit"] as const;

/** A fitted model as rows of quantity, value, standard error and unit. */
function tableOf({ model, parameters, errors, final, finalError, scatter, count, degrees }: DryingFit): readonly (readonly Shown[])[] {
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

export const dryingFitFunction = tableFunction({
  name: "DRYING.FIT",
  summary:
    "Table of a published drying model fitted to a run: its parameters with standard errors, final sample [g], residual scatter, and the law meant.",
  inputs,
  result: { about: "Quantity, value, standard error and unit, under headings", unit: "" },
  computeTable: (read) => tableOf(fitOf(read)),
  working: (read) => tableOf(fitOf(read)).map((row) => row.filter((shown) => shown !== "").join(" | ")),
  fixedBecause: NO_FORM.fittedCurve,
  examples: [
    {
      cell: '=RETORT.DRYING.FIT({0; 20; 40; 60; 80; 100}, {35; 34.2; 33.81; 33.6; 33.51; 33.45}, "Page", 25)',
      gives: [
        ["Quantity", "Value", "Standard error", "Unit"],
        ["k", 0.03633909192, 0.002848731559, "min^-n"],
        ["n", 0.9823597248, 0.02626959602, ""],
        ["Final sample, fitted", 8.395531111, 0.01386974359, "g"],
        ["Residual scatter s", 0.006758158912, "", "g"],
        ["Weighings", 6, "", ""],
        ["Degrees of freedom", 2, "", ""],
        ["Model: Page", "MR = exp(-k t^n), t in min since the first weighing", "", ""],
        ["Moisture ratio", "MR = (sample - final) / (first sample - final)", "", ""],
      ],
      about: "Made-up weighings in a 25 g vessel.",
    },
  ],
  source:
    "Lewis, Ind. Eng. Chem. 13 (1921) 427 (Newton); from memory: Page, thesis, Purdue (1949); Overhults, Trans. ASAE 16 (1973) 195 (modified Page); " +
    "Henderson and Pabis, J. Agric. Eng. Res. 6 (1961) 169; Henderson, Trans. ASAE 17 (1974) 1167 (two-term). Unweighted least squares; standard errors " +
    "count the first and the dry weighing as uncertain too (GUM 5.1).",
  caution: DRYING_CAUTION,
});
