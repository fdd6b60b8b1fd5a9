import { countedReplicates, type ZeroMeaning } from "../../confidence/countedReplicates";
import { filledRows, type Group, groupsOf } from "../../confidence/groups/groups";
import { pairsOf, type Pair } from "../../confidence/groups/pairs";
import { equalSpreadTest, type VarianceTest, welchTest } from "../../confidence/groups/varianceTests";
import { groupLabels } from "../../inputs/kinds/series";
import { NO_FORM } from "../../problems/sharing/plainCellProblems";
import { groupsVerdict } from "../../problems/functions/reportingProblems";
import { replicateInputs } from "../confidence/replicateInputs";
import { type Shown, tableFunction } from "../cellFunction";
import { inFigures } from "../inFigures";

interface Asked {
  readonly values: readonly (number | undefined)[];
  readonly groups: readonly (string | undefined)[];
  readonly zeros: ZeroMeaning | undefined;
}

interface Comparison {
  readonly groups: readonly Group[];
  readonly welch: VarianceTest;
  readonly equal: VarianceTest;
  readonly pairs: readonly Pair[];
  readonly verdict: string;
}

function compared({ values, groups: labels, zeros }: Asked): Comparison {
  const groups = groupsOf(countedReplicates(filledRows(values, labels, zeros), zeros), labels);
  const [welch, equal, pairs] = [welchTest(groups), equalSpreadTest(groups), pairsOf(groups)];
  return { groups, welch, equal, pairs, verdict: groupsVerdict(welch.p, pairs.length, pairs.filter(isApart).length) };
}

const isApart = ({ difference, halfWidth }: Pair): boolean => Math.abs(difference) > halfWidth;

const testRow = (label: string, { ratio, between, within, p }: VarianceTest): readonly Shown[] => [label, ratio, between, within, p];

export const compareGroupsFunction = tableFunction({
  name: "COMPARE.GROUPS",
  summary:
    "Table that compares the means of several groups of results: Welch's F, degrees of freedom and p, each pair's difference with its interval, a verdict.",
  inputs: {
    values: replicateInputs.values,
    groups: { ...groupLabels("Name of the group of each value, a word or a number beside it."), detail: "Letter case does not tell groups apart." },
    zeros: replicateInputs.zeros,
  },
  result: { about: "Groups, tests and pairs, a row each", unit: "" },
  computeTable: (asked) => {
    const { groups, welch, equal, pairs, verdict } = compared(asked);
    return [
      ["Group", "n", "Mean", "Standard deviation, s", ""],
      ...groups.map(({ label, count, mean, deviation }) => [label, count, mean, deviation, ""]),
      ["Test", "F", "Degrees of freedom between", "Degrees of freedom within", "p"],
      testRow("Welch, spreads not taken as equal", welch),
      testRow("One-way, spreads taken as equal", equal),
      ["Pair, first less second", "Difference", "from, 95 % together", "to", "0 in the interval"],
      ...pairs.map((pair) => {
        const { first, second, difference, halfWidth } = pair;
        return [`${first} - ${second}`, difference, difference - halfWidth, difference + halfWidth, isApart(pair) ? "no" : "yes"];
      }),
      ["Verdict", verdict, "", "", ""],
    ];
  },
  working: (asked) => {
    const { groups, welch, equal, pairs, verdict } = compared(asked);
    return [
      ...groups.map(
        ({ label, count, mean, deviation }) =>
          `${label}: n ${count}, mean ${inFigures(mean)}, weight n / s^2 = ${count} / ${inFigures(deviation)}^2 = ${inFigures(count / deviation ** 2)}`,
      ),
      `Welch: F ${inFigures(welch.ratio)} with ${welch.between} and ${inFigures(welch.within)} degrees of freedom, p ${inFigures(welch.p)}`,
      `equal spreads: F ${inFigures(equal.ratio)} with ${equal.between} and ${equal.within} degrees of freedom, p ${inFigures(equal.p)}`,
      ...pairs.map(
        ({ first, second, difference, halfWidth, degrees, standardError }) =>
          `${first} less ${second}: ${inFigures(difference)}, plus or minus ${inFigures(halfWidth)} (standard error ${inFigures(standardError)}, ${inFigures(degrees)} degrees of freedom)`,
      ),
      verdict,
    ];
  },
  fixedBecause: NO_FORM.rowsByGroup,
  examples: [
    {
      cell: '=RETORT.COMPARE.GROUPS({28.1; 28.4; 27.9; 30.2; 30.9; 31.1}, {"drum"; "drum"; "drum"; "pit"; "pit"; "pit"})',
      gives: [
        ["Group", "n", "Mean", "Standard deviation, s", ""],
        ["drum", 3, 28.133333333333333, 0.2516611478423581, ""],
        ["pit", 3, 30.733333333333334, 0.4725815626252616, ""],
        ["Test", "F", "Degrees of freedom between", "Degrees of freedom within", "p"],
        ["Welch, spreads not taken as equal", 70.74418604651157, 1, 3.0498969072164908, 0.003312485185648658],
        ["One-way, spreads taken as equal", 70.74418604651157, 1, 4, 0.0010937370151773743],
        ["Pair, first less second", "Difference", "from, 95 % together", "to", "0 in the interval"],
        ["drum - pit", -2.6000000000000014, -3.574717143721826, -1.6252828562781767, "no"],
        [
          "Verdict",
          "the means differ: Welch's p of 0.00331 is below 0.05; 1 pair of 1 shows it. Not why: a furnace, a day or a person may stand behind a group",
          "",
          "",
          "",
        ],
      ],
      about: "Char yields of two kilns [%].",
    },
  ],
  source:
    "Welch, Biometrika 38 (1951) 330; one-way analysis of variance beside it; pairs by Welch's t with Satterthwaite's degrees of freedom, 5 % shared out over all pairs (Bonferroni). Results of a group are taken as independent and roughly normal.",
});
