import { blankCorrected, isWithinScatter, LARGEST_SHARE, SCATTER } from "../../balance/blankCorrected";
import { standardUncertainty } from "../../inputs/kinds/statistics";
import { massLost, signedMass } from "../../inputs/kinds/weighings";
import { optional } from "../../inputs/optional";
import { BOTH_GAINED, NET_IS_SCATTER } from "../../problems/functions/balanceProblems";
import { blankTooLarge, gainedMoreThanScatter } from "../../problems/sharing/plainCellProblems";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";

export const blankCorrectedFunction = cellFunction({
  name: "BLANKCORRECTED",
  summary: "The loss of a sample less what the empty vessel itself lost in the same programme [g].",
  inputs: {
    loss: {
      ...massLost("Loss of vessel and sample, before - after [g]; below zero if both together gained."),
      detail: "A loss of exactly 0 looks like blank cells and is refused; the answer is then -blankLoss.",
    },
    blankLoss: {
      ...signedMass("Loss of the empty vessel, before - after [g]; below zero if it gained."),
      detail: "A metal vessel may gain oxide: its blank is negative and adds.",
    },
    u: {
      ...optional(standardUncertainty("Standard uncertainty of one weighing [g], as READING.U gives it."), "a result below zero is refused"),
      detail: "A result stands on four weighings; up to 4 u either way is their scatter, and is answered with a note in This cell.",
    },
  },
  result: { about: "Loss of the sample alone", unit: "g" },
  compute: ({ loss, blankLoss, u }) => blankCorrected(loss, blankLoss, u),
  working: ({ loss, blankLoss, u = 0 }) => {
    const net = blankCorrected(loss, blankLoss, u);
    return [
      `loss of the sample = ${inFigures(loss)} - ${blankLoss < 0 ? `(${inFigures(blankLoss)})` : inFigures(blankLoss)} = ${inFigures(net)} g`,
      ...(isWithinScatter(net, u) ? [NET_IS_SCATTER] : loss < 0 ? [BOTH_GAINED] : []),
    ];
  },
  refusesInCells: ({ loss, blankLoss, u }) => {
    const [whole, blank] = [operand(loss), operand(blankLoss)];
    const unlessScatter = (when: string): string =>
      u === "" ? when : `IF(ABS(${whole}-${blank})<=${SCATTER}*${operand(numberInCells(u, 0))},0,${when})`;
    return [
      { when: unlessScatter(`(${whole}<0)*(${whole}<${blank})`), says: gainedMoreThanScatter },
      { when: unlessScatter(`ABS(${blank})>IF(${whole}<0,-${LARGEST_SHARE}*${whole},${whole})`), says: blankTooLarge },
    ];
  },
  inCells: ({ loss, blankLoss }) => `${operand(loss)}-${operand(blankLoss)}`,
  examples: [
    { cell: "=RETORT.BLANKCORRECTED(0.85, 0.004)", gives: 0.846 },
    { cell: "=RETORT.BLANKCORRECTED(0.85, -0.002)", gives: 0.852, about: "The tin gained 2 mg of oxide, so the sample lost more than it seemed." },
    { cell: "=RETORT.BLANKCORRECTED(0.0004, 0.0006, 0.0001)", gives: -0.0002, about: "Near zero: no more than four weighings scatter." },
  ],
  source: "Follows from the definition of a blank: the empty vessel run through the same programme.",
});
