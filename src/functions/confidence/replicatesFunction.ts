import { countedReplicates, type ZeroMeaning } from "../../confidence/countedReplicates";
import { criticalRangeFactor } from "../../confidence/criticalRangeFactor";
import { replicateStatistics, type ReplicateStatistics, replicateVerdict } from "../../confidence/replicateStatistics";
import { standardDeviation } from "../../inputs/kinds/statistics";
import { optional } from "../../inputs/optional";
import { tableFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { replicateInputs } from "./replicateInputs";
import { replicatesInCells } from "./replicatesInCells";

interface Asked {
  readonly values: readonly (number | undefined)[];
  readonly repeatabilitySd: number | undefined;
  readonly zeros: ZeroMeaning | undefined;
  readonly readability: number | undefined;
}

const statisticsOf = (asked: Asked): ReplicateStatistics =>
  replicateStatistics(
    countedReplicates(asked.values, asked.zeros).map(({ value }) => value),
    asked.repeatabilitySd,
    asked.readability,
  );

const limitOf = ({ repeatabilitySd }: Asked): string => (repeatabilitySd === undefined ? "2.8 s" : "2.8 repeatabilitySd");

export const replicatesFunction = tableFunction({
  name: "REPLICATES",
  summary:
    "Table of replicate results: count, mean, median, standard deviation, RSD, repeatability limit, range, critical range, and a verdict in words.",
  inputs: {
    values: replicateInputs.values,
    repeatabilitySd: optional(
      standardDeviation("Repeatability standard deviation from earlier work, in the unit of the values."),
      "the range is not judged",
    ),
    zeros: replicateInputs.zeros,
    readability: replicateInputs.readability,
  },
  result: { about: "One quantity a row, with its value", unit: "" },
  computeTable: (asked) => {
    const of = statisticsOf(asked);
    return [
      ["Quantity", "Value"],
      ["Results, n", of.count],
      ["Mean", of.mean],
      ["Median", of.median],
      ["Standard deviation, s", of.deviation],
      ["Relative standard deviation, s / |mean|", of.relativeDeviation ?? "none: the mean is 0"],
      [`Repeatability limit, r = ${limitOf(asked)}`, of.repeatabilityLimit],
      ["Range, largest - smallest", of.range],
      ["Critical range, 95 %, f(n) repeatabilitySd", of.criticalRange ?? ""],
      ["Verdict", replicateVerdict(of)],
    ];
  },
  working: (asked) => {
    const of = statisticsOf(asked);
    const { repeatabilitySd: sd } = asked;
    return [
      `n = ${of.count}, mean = ${inFigures(of.mean)}, s (n - 1) = ${inFigures(of.deviation)}`,
      `r = ${limitOf(asked)} = 2.8 x ${inFigures(sd ?? of.deviation)} = ${inFigures(of.repeatabilityLimit)}: two results differ by more in one case of twenty`,
      `range = ${inFigures(of.range)}`,
      ...(sd === undefined || of.criticalRange === undefined
        ? []
        : [
            `critical range = f(${of.count}) x repeatabilitySd = ${inFigures(criticalRangeFactor(of.count))} x ${inFigures(sd)} = ${inFigures(of.criticalRange)}`,
          ]),
      replicateVerdict(of),
    ];
  },
  inManyCells: replicatesInCells,
  examples: [
    {
      cell: "=RETORT.REPLICATES({10.1; 10.3; 10.2; 10.6}, 0.1)",
      gives: [
        ["Quantity", "Value"],
        ["Results, n", 4],
        ["Mean", 10.3],
        ["Median", 10.25],
        ["Standard deviation, s", 0.21602468994692872],
        ["Relative standard deviation, s / |mean|", 0.020973270868633855],
        ["Repeatability limit, r = 2.8 repeatabilitySd", 0.27999999999999997],
        ["Range, largest - smallest", 0.5],
        ["Critical range, 95 %, f(n) repeatabilitySd", 0.3633159574902626],
        ["Verdict", "not acceptable: the range is above the critical range; look for a cause, take more results, or report the median and say so"],
      ],
    },
  ],
  source:
    "ISO 5725-6 (from memory, check your edition): r = 2.8 s, 4.1.4; critical range f(n) s, clause 5, with f(n) integrated from the range of n normal deviates where the standard prints one decimal. Rounding may change the range by a step; where that decides, the verdict says so.",
});
