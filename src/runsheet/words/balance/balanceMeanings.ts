import type { BalanceCheck } from "../../sheet/balanceRows";
import { meaningWords, type Meaning } from "../meaningWords";
import { sheetWords } from "../sheetWords";
import { balanceWords } from "./balanceWords";

/** Words by which cells of a balance check are called that have no label of their own. */
export const balanceNameWords = {
  head: { answer: "What the balance shows", covers: "What its ± covers", openly: "Figure for run sheets" },
  number: "Number of the round",
} as const;

const { rounds, corners, performance, workings } = balanceWords;
const READINGS = "Difference of readings of one balance.";
const SHEWHART =
  "Prediction interval of one more round, t s sqrt(1 + 1/n) of the n rounds before (Hahn and Meeker 1991, ch. 4; ISO 16269-8, from memory), for 1 in 20 and 1 in 370 as Shewhart's limits, at least one and two display steps.";
const CHART_LINES =
  "Two standard deviations on either side of the mean, as the warning lines of Shewhart's charts; that it is one step at least is our own convention.";
const SPREAD = "Mean and standard deviation of the readings (GUM, JCGM 100:2008, 4.2).";
const OF_BIAS =
  "Root of the sum of squares of t s / sqrt(n), Student's t at 95 % with n - 1 degrees of freedom; rounding, 2 d sqrt(2 / 12) for the display step d; and the weight's own ±.";
const [mean = "", scatter = "", count = ""] = workings.history.split("; ");

/** What each calculated cell of a balance check means, by what it is called on the sheet. */
export const balanceMeanings: readonly (readonly [name: string, meaning: Meaning])[] = [
  [balanceNameWords.head.answer, { about: "How far the balance is off its check weight, in a sentence that begins with the verdict.", source: "Own convention: the sheet marks what its checks put in doubt." }], // prettier-ignore
  [balanceNameWords.head.covers, { about: "What the ± of that figure covers and what it does not.", source: "GUM (JCGM 100:2008), 3.3.2: what is not measured is no part of a ±." }], // prettier-ignore
  [balanceNameWords.head.openly, { about: "The repeatability and display step that run sheets on this balance may take.", source: "Own convention: scatter of the rounds, and what the corners add." }], // prettier-ignore
  [balanceNameWords.number, { about: "Which round this is, for the chart.", source: "Own convention." }],
  [rounds.columns.off, { about: "This reading less the weight's value.", source: READINGS }],
  [rounds.columns.apart, { about: "This reading less the mean of the rounds before it; blank until five stand before it.", source: SHEWHART }],
  [
    rounds.columns.expected,
    { about: "How far one round in 20 lies off the mean of the rounds before by chance alone, and no less than one display step.", source: SHEWHART },
  ],
  [
    rounds.total,
    {
      about: "Of all rounds together: their mean less the weight's value, and how far the next one is to be expected off that mean, 95 %.",
      source: SHEWHART,
    },
  ],
  [corners.columns.off, { about: "This place less the centre, the mean of its one or two readings.", source: READINGS }],
  [corners.total, { about: "The place farthest off the centre, with its sign.", source: READINGS }],
  [
    performance.labels.bias,
    { about: "By how much the mean of all rounds is off the weight's value; below 0 the balance shows too little.", source: READINGS },
  ],
  [performance.labels.scatter, { about: "Standard deviation of one reading, from all rounds.", source: SPREAD }],
  [performance.labels.corner, { about: "The place of the pan farthest off the centre.", source: READINGS }],
  [performance.labels.zero, { about: "What was left on the empty pan at the most, once the weight was off.", source: READINGS }],
  [performance.labels.forRuns, { about: "What run sheets on this balance may take as its repeatability: root of s^2 + (largest corner)^2 / 12.", source: "A load somewhere between the corners, rectangular (EURAMET cg-18, 7.1, from memory); GUM (JCGM 100:2008), 4.3.7." }], // prettier-ignore
  [
    performance.columns.plusMinus,
    { about: "How far the figure beside it may be off.", plusMinus: `95 %. ${OF_BIAS}`, source: "GUM (JCGM 100:2008), 5.1.2 and 6.2." },
  ],
  [sheetWords.says, { about: "What the sheet makes of this row.", source: SHEWHART }],
  [mean, { about: "Mean of all readings.", source: SPREAD }],
  [scatter, { about: "Standard deviation of all readings.", source: SPREAD }],
  [count, { about: "How many rounds have a reading.", source: "Own convention." }],
  [
    "change two explain",
    { about: "The change that two readings explain by themselves: 2 sqrt(2) s, at least two display steps.", source: meaningWords.explained.source },
  ],
  [
    "row of the round apart from the others",
    {
      about: "The row of a round so far off all the others that chance has it so once in 100 such histories; 0 for none.",
      source: "Grubbs' test at 1 %, two-sided (ISO 5725-2:1994, 7.3; Grubbs 1969, from memory), with rounding in its s.",
    },
  ],
  ...workings.limits.split("; ").map((name) => [name, { about: "An end of a line in the chart: the mean of all rounds, and 2 s, at least one step, below or above it.", source: CHART_LINES }] as const), // prettier-ignore
];

/** What the sheet says beside a place of the pan, which no history foretells. */
export const saysOfCorner: Meaning = {
  about: "Whether this place reads as the centre does, by the change that two readings explain.",
  source: "GUM (JCGM 100:2008), 6.3.3, for the factor 2: a difference of two readings beyond 2 sqrt(2) s is real.",
};

/** What each check of a balance check looks at. */
export const balanceCheckMeanings: Readonly<Record<BalanceCheck, string>> = {
  given: "Whether the weight's value and the display step are given, and the weight is known well enough to judge this balance by.",
  dates: "Whether dates are such, follow one another and the day it was begun by no more than three years, and stand beside each reading.",
  rows: "Whether every reading is a number and no round is left out above a filled one.",
  slip: "Whether every reading is of this weight: within a hundredth of its value (own bound).",
  newest: "Whether no round lies apart from all others, the newest lies where those before lead one to expect, and none climb or fall all along.",
  bias: "Whether the mean is off the weight's value by no more than its ±.",
  zero: "Whether the newest zero, once the weight was off, is one that readings explain.",
  corners: "Whether every place of the pan reads as the centre does.",
  typedOver:
    "Whether no row of boxes was deleted, no column moved, and every calculated cell still holds its formula. One that the answer is calculated from withholds it, any other marks it.",
};
