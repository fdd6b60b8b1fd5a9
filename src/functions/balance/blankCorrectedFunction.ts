import { blankCorrected } from "../../balance/blankCorrected";
import { balanceReading, signedMass } from "../../inputs/kinds/weighings";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { operand } from "../operand";

export const blankCorrectedFunction = cellFunction({
  name: "BLANKCORRECTED",
  summary: "The loss of a sample less what the empty vessel itself lost in the same programme [g].",
  inputs: {
    loss: balanceReading("Loss of vessel and sample, before - after [g]."),
    blankLoss: {
      ...signedMass("Loss of the empty vessel, before - after [g]; below zero if it gained."),
      detail: "A metal vessel may gain oxide: its blank is negative and adds.",
    },
  },
  result: { about: "Loss of the sample alone", unit: "g" },
  compute: ({ loss, blankLoss }) => blankCorrected(loss, blankLoss),
  working: ({ loss, blankLoss }) => [
    `loss of the sample = ${inFigures(loss)} - ${blankLoss < 0 ? `(${inFigures(blankLoss)})` : inFigures(blankLoss)} = ${inFigures(blankCorrected(loss, blankLoss))} g`,
  ],
  inCells: ({ loss, blankLoss }) => `${operand(loss)}-${operand(blankLoss)}`,
  examples: [
    { cell: "=RETORT.BLANKCORRECTED(0.85, 0.004)", gives: 0.846 },
    { cell: "=RETORT.BLANKCORRECTED(0.85, -0.002)", gives: 0.852, about: "The tin gained 2 mg of oxide, so the sample lost more than it seemed." },
  ],
  source: "Follows from the definition of a blank: the empty vessel run through the same programme.",
});
