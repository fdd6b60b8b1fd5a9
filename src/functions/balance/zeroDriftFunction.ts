import { shareOfSpan, zeroDrift } from "../../balance/zeroDrift";
import { laterTime, startTime } from "../../inputs/kinds/times";
import { balanceReading, signedMass } from "../../inputs/kinds/weighings";
import { optional } from "../../inputs/optional";
import { cellFunction } from "../cellFunction";
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
  inCells: ({ reading, zeroBefore, zeroAfter, timeBefore, time, timeAfter }) => {
    const [first, second] = [operand(zeroBefore), operand(zeroAfter)];
    return `${operand(reading)}-(${first}+(${second}-${first})*${shareInCells(timeBefore, time, timeAfter)})`;
  },
  examples: [
    { cell: "=RETORT.ZERODRIFT(31.5, 0.002, 0.006)", gives: 31.496 },
    { cell: "=RETORT.ZERODRIFT(31.5, 0.002, 0.006, 0, 2, 5)", gives: 31.4964, about: "Weighed 2 of 5 minutes after the first zero." },
    { cell: "=RETORT.ZERODRIFT(10.0051, 10.0002, 10.0006)", gives: 0.0047, about: "A-B-A: how much B outweighs the reference weight A." },
  ],
  source:
    "Straight-line interpolation of the zero; without times the A-B-A difference B - (A1 + A2) / 2 of mass calibration, in which a steady drift cancels.",
});

/** Midway while no times stand in the cells. */
function shareInCells(before: string, at: string, after: string): string {
  if (at === "" || after === "") return "0.5";
  const start = operand(before === "" ? "0" : before);
  const share = `(${operand(at)}-${start})/(${operand(after)}-${start})`;
  return Number.isFinite(Number(after)) ? share : `IF(ISNUMBER(${after}),IF(${after}>0,${share},0.5),0.5)`;
}
