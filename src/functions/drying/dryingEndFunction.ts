import { rememberedEnd } from "./rememberedEnd";
import { CONSTANCY_CRITERIA } from "../../drying/constantWeight/constancyCriteria";
import { type DryingRun, endOfDrying } from "../../drying/end/endOfDrying";
import { choice } from "../../inputs/choice";
import { rowCounted } from "../../inputs/column";
import type { Read } from "../../inputs/Input";
import { minutes, timingBound } from "../../inputs/kinds/times";
import { balanceDeviation, changeLimit, readability } from "../../inputs/kinds/weighings";
import { optional } from "../../inputs/optional";
import { NO_FORM } from "../../problems/sharing/plainCellProblems";
import { tableFunction } from "../cellFunction";
import { DRYING_CAUTION } from "./dryingCaution";
import { dryingEndTable, dryingEndWorking } from "./dryingEndWords";
import { checkSameRows, seriesVessel, seriesWeights } from "./seriesInputs";

const inputs = {
  times: rowCounted(minutes("Time of each weighing [min], rising; the intervals may differ.")),
  weights: seriesWeights,
  vessel: seriesVessel,
  readability: optional(readability("Smallest display step of the balance [g]."), "the last digit of the weighings"),
  limit: {
    ...optional(changeLimit("Largest change that counts as constant, in the unit of the criterion."), '0.001 "of last"'),
    detail: "The unit is g, a fraction, a fraction per hour or display steps, as the criterion says.",
  },
  criterion: optional(choice("What the limit is, as in CONSTANTWEIGHT.", CONSTANCY_CRITERIA), "of last"),
  timing: optional(timingBound("How far each time may be off [min]; makes fast-losing weighings count for less."), "times are exact"),
  repeatability: optional(
    balanceDeviation("Standard deviation of repeated weighings of one load [g]."),
    "one display step is how far it may scatter",
  ),
};

function runOf({ times, weights, ...rest }: Read<typeof inputs>): DryingRun {
  checkSameRows(times, weights);
  return { ...rest, times: times.values, weights: weights.values };
}

export const dryingEndFunction = tableFunction({
  name: "DRYING.END",
  summary:
    "Table of where a drying run is heading: predicted final sample with its uncertainty [g], rate constant, water left, weighings to go. A prediction, never the dry weight.",
  inputs,
  result: { about: "Label, value and unit, one row each", unit: "" },
  computeTable: (read) => dryingEndTable(rememberedEnd(runOf(read))),
  working: (read) => dryingEndWorking(endOfDrying(runOf(read))),
  fixedBecause: NO_FORM.endOfCurves,
  examples: [
    {
      cell: "=RETORT.DRYING.END({0; 20; 40; 60; 80}, {35; 34.2; 33.8; 33.6; 33.5}, 25, 0.001)",
      gives: [
        ["Predicted final sample", 8.4, "g"],
        ["its standard uncertainty", 0.02159458804, "g"],
        ["its 95 % uncertainty, plus or minus", 0.03860117838, "g"],
        ["Water still in the sample, by the curve", 0.1, "g"],
        ["its standard uncertainty", 0.02158827181, "g"],
        ["Rate constant", 0.03465735903, "1/min"],
        ["its standard uncertainty", 0.00003821433509, "1/min"],
        ["Time in which the water halves", 20, "min"],
        ["More weighings until constant", 4, "every 20 min"],
        ["Weighings on the falling rate", 5, "of 5"],
        ["Scatter about the curve", 0, "g"],
        ["Three-point extrapolation", 8.4, "g"],
        ["Cross-check", "The three-point extrapolation agrees within the 95 % uncertainties.", ""],
        [
          "Verdict",
          "Not constant yet: about 0.1 g of water still in it. About 4 more weighings, 20 min apart, until 0.001 (of last) is met. " +
            "These weighings cannot rule out a slower tail, with which the end may be as low as 8.361 g. " +
            "Few weighings carry the curve, so go by the 95 % uncertainty. A prediction, not the dry weight: that is what you weigh once it is constant.",
          "",
        ],
      ],
      about: "Made-up weighings: every 20 minutes half of the water left.",
    },
  ],
  source:
    "Falling rate: final + water exp(-k t), the model of Lewis (Ind. Eng. Chem. 13 (1921) 427), by weighted least squares over the last weighings that carry it. " +
    "Its uncertainty counts every curve that the weighings allow (profile of the sum of squares over the shape; ranges chosen by this program): up to 20 % of " +
    "the water at 1/2 to 1/10 of the rate, or where a tail shows up to 30 % at 1/2 to 1/15, Page exponents 0.65 to 1.35, an oven in which the rate falls by up to half; where none of them follows the weighings, " +
    "also curves through the last of them alone. A tail that holds more of the water, or is slower, is not covered. Scatter: chi-square at 1 %. " +
    "Cross-check: Aitken's delta squared (Proc. R. Soc. Edinburgh 46 (1926) 289). Reading: 0.41 display steps (USP <41>). " +
    "The constant-rate beginning is left out to the end of the interval after the last one that loses at least nine tenths as fast as the fastest (common practice, no source); " +
    "then a first weighing clearly off the curve of the others (t test, 1 %) and its neighbour.",
  caution: DRYING_CAUTION,
});
