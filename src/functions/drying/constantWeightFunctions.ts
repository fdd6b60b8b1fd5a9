import { CONSTANCY_CRITERIA, limitInForce } from "../../drying/constantWeight/constancyCriteria";
import { type ConstancyRun, type ConstancyStep, constancySteps, constantWeight } from "../../drying/constantWeight/constancySteps";
import { criteriaLike } from "../../drying/constantWeight/dryingCriteria";
import { choice } from "../../inputs/choice";
import { column, rowCounted } from "../../inputs/column";
import type { Read } from "../../inputs/Input";
import { leastMinutes, minutes } from "../../inputs/kinds/times";
import { changeLimit, readability, weighing } from "../../inputs/kinds/weighings";
import { optional } from "../../inputs/optional";
import { plainNumber } from "../../problems/quoted";
import { cellFunction, tableFunction } from "../cellFunction";
import type { TableInCells } from "../inCells/Workings";
import { inFigures } from "../inFigures";
import { constancyInCells, constantWeightInCells, type StepsInCells } from "./constancyInCells";
import { DRYING_CAUTION } from "./dryingCaution";
import { checkSameRows, seriesVessel } from "./seriesInputs";

const CRITERIA_IN_WORDS = [
  "absolute (g)",
  "of last, of initial, of total loss (fraction of the newer weighing, the first, the loss so far)",
  "per gram (g per g of sample taken, the same as of initial)",
  "per hour (fraction of the newer weighing)",
  "readability (display steps)",
].join("; ");

const inputs = {
  weights: {
    ...rowCounted(column("Weighings in the order taken [g]: with the vessel if vessel is given, else of the sample alone.", weighing)),
    detail: "A vessel left in hides the change: give it as vessel, or give net weighings.",
  },
  limit: {
    ...optional(changeLimit("Largest change that counts as constant, in the unit of the criterion."), '0.001 "of last"'),
    detail: "The unit is g, a fraction, a fraction per hour or display steps, as the criterion says.",
  },
  criterion: {
    ...optional(choice("What the limit is measured in, one of seven words.", CONSTANCY_CRITERIA), "of last"),
    detail: `${CRITERIA_IN_WORDS}.`,
  },
  times: optional(rowCounted(minutes("Time of each weighing [min].")), "not given"),
  vessel: seriesVessel,
  readability: optional(readability("Smallest display step of the balance [g]."), "taken as fine enough"),
  interval: optional(leastMinutes("Least time between two weighings that are compared [min]; needs times."), "neighbours"),
};

function runOf({ weights, times, ...rest }: Read<typeof inputs>): ConstancyRun {
  if (times !== undefined) checkSameRows(times, weights);
  return { ...rest, weights: weights.values, times: isBlankColumn(times?.values, weights.values) ? undefined : times?.values };
}

/** True for a blank column that the host has handed over as zeros: there is a 0 for a first weighing and nothing for the next. */
const isBlankColumn = (times: readonly number[] | undefined, weights: readonly number[]): boolean =>
  times?.length === 1 && times[0] === 0 && weights.length > 1;

const SOURCE =
  "EN 322 and EN 13183-1 (0.1 % of the mass), ISO 18134-1 (0.2 % of the total loss, from memory), ASTM D4442 method A (two display steps), ASTM D3302 (per hour), pharmacopoeias (mg, mg per g). A limit met exactly counts as met. Check your edition.";

export const constantWeightFunction = cellFunction({
  name: "CONSTANTWEIGHT",
  summary:
    "Number, from 1, of the weighing at which a drying sample reached constant weight and stayed; 0 while it has not (fewer than two weighings included).",
  inputs,
  result: { about: "First weighing of the unbroken steady run; 0 for not yet", unit: "" },
  compute: (read) => constantWeight(runOf(read)),
  working: (read) => workingOf(runOf(read)),
  inManyCells: (texts, workings) => {
    const found = constancyInCells(texts, workings);
    return found && constantWeightInCells(found);
  },
  examples: [
    { cell: "=RETORT.CONSTANTWEIGHT({10; 9.2; 8.95; 8.9; 8.893})", gives: 5 },
    {
      cell: '=RETORT.CONSTANTWEIGHT({10; 9.2; 8.95; 8.9; 8.893}, 0.002, "of total loss")',
      gives: 0,
      about: "The same sample by another standard: 7 mg is more than 0.2 % of the 1.107 g lost.",
    },
    {
      cell: '=RETORT.CONSTANTWEIGHT({35; 34.2; 33.95; 33.9}, 0.002, "", "", 25)',
      gives: 0,
      about: "With its 25 g vessel given: 50 mg is 0.56 % of the sample.",
    },
    {
      cell: "=RETORT.CONSTANTWEIGHT({35; 34.2; 33.95; 33.9}, 0.002)",
      gives: 4,
      about: "Wrong: the same weighings with the vessel left in seem constant, 0.15 % of sample and vessel.",
    },
  ],
  source: SOURCE,
  caution: DRYING_CAUTION,
});

const HEADINGS = ["Weighing", "Sample (g)", "Change (g)", "Limit (g)", "Verdict"] as const;

export const constantWeightStepsFunction = tableFunction({
  name: "CONSTANTWEIGHT.STEPS",
  summary: "Table of a drying run: each weighing, sample [g], change since the compared weighing [g], allowed change [g], and a verdict in words.",
  inputs,
  result: { about: "One row for each weighing, under headings", unit: "" },
  computeTable: (read) => [
    HEADINGS,
    ...constancySteps(runOf(read)).map(({ weighing: number, sample, change = "", limit = "", verdict }) => [number, sample, change, limit, verdict]),
  ],
  working: (read) => workingOf(runOf(read)),
  inManyCells: (texts, workings) => {
    const found = constancyInCells(texts, workings);
    return found && stepsTable(found);
  },
  examples: [
    {
      cell: '=RETORT.CONSTANTWEIGHT.STEPS({10; 9.2; 9.194}, 0.01, "absolute")',
      gives: [HEADINGS, [1, 10, "", "", "first"], [2, 9.2, -0.8, 0.01, "not yet"], [3, 9.194, -0.006, 0.01, "steady"]],
    },
  ],
  source: SOURCE,
  caution: DRYING_CAUTION,
});

/** A constant-weight answer line by line: the rule, every comparison, and the standards that use this limit. */
function workingOf(run: ConstancyRun): readonly string[] {
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

/** The table in cells: a row for each cell of weights, empty where nothing has been weighed yet. */
function stepsTable({ steps, check }: StepsInCells): TableInCells {
  const [first = "", ...headings] = HEADINGS.map((heading) => `"${heading}"`);
  return [
    [`IF(ISERROR(${check}),${check},${first})`, ...headings],
    ...steps.map(({ filled, sample, change, limit, verdict }, index) => [
      `IF(${filled}=0,"",${index + 1})`,
      ...[sample, change, limit, verdict].map((cell) => `IF(${filled}=0,"",${cell})`),
    ]),
  ];
}
