import { LARGEST_DRIFT, shareOfSpan, WEEK, zeroDrift } from "../../balance/zeroDrift";
import { laterTime, startTime } from "../../inputs/kinds/times";
import { balanceReading, signedMass } from "../../inputs/kinds/weighings";
import { optional } from "../../inputs/optional";
import { startTimeNotClear, timeNotInBetween, timesIncomplete, zerosTooFarApart } from "../../problems/sharing/plainCellProblems";
import { cellFunction } from "../cellFunction";
import type { RefusalInCells } from "../inCells/RefusalInCells";
import { isGivenInCells, numberInCells } from "../numberInCells";
import { inFigures } from "../inFigures";
import { operand } from "../operand";

export const zeroDriftFunction = cellFunction({
  name: "ZERODRIFT",
  summary: "A weighing less the drifting zero of the balance, taken on a straight line between two readings of the empty pan [g].",
  inputs: {
    reading: balanceReading("The weighing [g]."),
    zeroBefore: {
      ...signedMass("Reading of the empty pan before it [g], below zero with its sign."),
      detail: "Of a reference weight instead, for the difference between the two: A-B-A.",
    },
    zeroAfter: signedMass("Reading of the empty pan after it [g]."),
    timeBefore: {
      ...optional(startTime("Time of the first zero."), "with the other two, the weighing is taken as midway"),
      detail: "Minutes or clock times, the same for all three: only their proportion counts.",
    },
    time: optional(laterTime("Time of the weighing."), "not given"),
    timeAfter: optional(laterTime("Time of the second zero."), "not given"),
  },
  result: { about: "The weighing, zero taken off", unit: "g" },
  compute: ({ reading, zeroBefore, zeroAfter, timeBefore, time, timeAfter }) =>
    zeroDrift(reading, zeroBefore, zeroAfter, { before: timeBefore, at: time, after: timeAfter }),
  working: ({ reading, zeroBefore, zeroAfter, timeBefore, time, timeAfter }) => {
    const times = { before: timeBefore, at: time, after: timeAfter };
    const answer = zeroDrift(reading, zeroBefore, zeroAfter, times);
    const share = shareOfSpan(times);
    return [
      time === undefined ? "no times: midway between the zeros, 0.5" : `share of the span between the zeros = ${inFigures(share)}`,
      `zero then = ${inFigures(zeroBefore)} + (${inFigures(zeroAfter)} - ${inFigures(zeroBefore)}) x ${inFigures(share)} = ${inFigures(reading - answer)} g`,
      `reading - zero = ${inFigures(reading)} - ${inFigures(reading - answer)} = ${inFigures(answer)} g`,
    ];
  },
  refusesInCells: driftRefusals,
  inCells: (texts) => {
    const [first, second] = [operand(texts.zeroBefore), operand(texts.zeroAfter)];
    return `${operand(texts.reading)}-(${first}+(${second}-${first})*${shareInCells(texts)})`;
  },
  examples: [
    { cell: "=RETORT.ZERODRIFT(31.5, 0.002, 0.006)", gives: 31.496 },
    { cell: "=RETORT.ZERODRIFT(31.5, 0.002, 0.006, 0, 2, 5)", gives: 31.4964, about: "Weighed 2 of 5 minutes after the first zero." },
    { cell: "=RETORT.ZERODRIFT(10.0051, 10.0002, 10.0006)", gives: 0.0047, about: "A-B-A: how much B outweighs the reference weight A." },
  ],
  source:
    "Straight-line interpolation of the zero; without times the A-B-A difference B - (A1 + A2) / 2 of mass calibration, in which a steady drift cancels.",
});

type DriftTexts = Readonly<Record<"reading" | "zeroBefore" | "zeroAfter" | "timeBefore" | "time" | "timeAfter", string>>;

/** How many of the three times say that times are meant. */
const timesGiven = ({ timeBefore, time, timeAfter }: DriftTexts): string =>
  `(${isGivenInCells(timeBefore)}+${isGivenInCells(time)}+${isGivenInCells(timeAfter)})`;

const NO_TIMES = "(0+0+0)";

/** What `balance/zeroDrift` refuses, in its order. */
function driftRefusals(texts: DriftTexts): readonly RefusalInCells[] {
  const [first, second] = [operand(texts.zeroBefore), operand(texts.zeroAfter)];
  const apart = { when: `ABS(${second}-${first})>${LARGEST_DRIFT}*${operand(texts.reading)}`, says: zerosTooFarApart };
  const given = timesGiven(texts);
  if (given === NO_TIMES) return [apart];
  const [before, at, after] = timesInCells(texts);
  const all = `${isGivenInCells(texts.timeBefore, true)}*${isGivenInCells(texts.time)}*${isGivenInCells(texts.timeAfter)}`;
  return [
    apart,
    { when: `(${given}>0)*(1-${all})`, says: timesIncomplete },
    { when: `IF(${given}>0,(${before}=0)*((${after}<1)+(${after}>${WEEK})),0)`, says: startTimeNotClear },
    { when: `IF(${given}>0,(${at}<${before})+(${at}>${after})+(${before}=${after}),0)`, says: timeNotInBetween },
  ];
}

const timesInCells = ({ timeBefore, time, timeAfter }: DriftTexts): readonly [string, string, string] => [
  numberInCells(timeBefore, 0),
  numberInCells(time, 0),
  numberInCells(timeAfter, 0),
];

/** Midway while no times stand in the cells. */
function shareInCells(texts: DriftTexts): string {
  const given = timesGiven(texts);
  if (given === NO_TIMES) return "0.5";
  const [before, at, after] = timesInCells(texts);
  const share = `(${at}-${before})/(${after}-${before})`;
  return given === "(1+1+1)" ? share : `IF(${given}>0,${share},0.5)`;
}
