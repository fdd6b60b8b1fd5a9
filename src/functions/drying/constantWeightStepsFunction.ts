import { constancySteps } from "../../weighing/constancySteps";
import { tableFunction } from "../cellFunction";
import { constancyInputs } from "./constancyInputs";
import { constancyRunOf } from "./constancyRunOf";
import { CONSTANCY_SOURCE } from "./constancySource";
import { constancyWorking } from "./constancyWorking";
import { DRYING_CAUTION } from "./dryingCaution";

const HEADINGS = ["Weighing", "Sample (g)", "Change (g)", "Limit (g)", "Verdict"] as const;

export const constantWeightStepsFunction = tableFunction({
  name: "CONSTANTWEIGHT.STEPS",
  summary: "Table of a drying run: each weighing, sample [g], change since the compared weighing [g], allowed change [g], and a verdict in words.",
  inputs: constancyInputs,
  result: { about: "One row for each weighing, under headings", unit: "" },
  computeTable: (read) => [
    HEADINGS,
    ...constancySteps(constancyRunOf(read)).map(({ weighing: number, sample, change = "", limit = "", verdict }) => [
      number,
      sample,
      change,
      limit,
      verdict,
    ]),
  ],
  working: (read) => constancyWorking(constancyRunOf(read)),
  examples: [
    {
      cell: '=RETORT.CONSTANTWEIGHT.STEPS({10; 9.2; 9.194}, 0.01, "absolute")',
      gives: [HEADINGS, [1, 10, "", "", "first"], [2, 9.2, -0.8, 0.01, "not yet"], [3, 9.194, -0.006, 0.01, "steady"]],
    },
  ],
  source: CONSTANCY_SOURCE,
  caution: DRYING_CAUTION,
});
