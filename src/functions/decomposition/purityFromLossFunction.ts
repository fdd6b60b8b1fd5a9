import { EDITION } from "../../chemistry/atomicWeights";
import { purityFromLoss, type Purity } from "../../decomposition/purityFromLoss";
import { choice } from "../../inputs/choice";
import { lossUncertainty } from "../../inputs/kinds/lossUncertainty";
import { presentMassFraction, wetMoisture } from "../../inputs/kinds/shares";
import { formulaText } from "../../inputs/kinds/words";
import { optional } from "../../inputs/optional";
import { purityAboveOne, purityBelowOne, purityNotToldFromOne, uNeeded } from "../../problems/decompositionProblems";
import { cellFunction, type Shown } from "../cellFunction";
import { inFigures } from "../inFigures";
import { DECOMPOSING } from "./cautions";
import { steps } from "./theoreticalLossFunction";

export const purityFromLossFunction = cellFunction({
  name: "PURITY.FROMLOSS",
  summary: "Purity of a compound from its loss on heating, as a share of the dry sample [fraction]; above 1 where more left than it can lose.",
  inputs: {
    loss: presentMassFraction("Loss of the sample as weighed in [fraction]."),
    start: formulaText('Formula of the pure compound, such as "CaCO3".'),
    residue: formulaText('Formula of what is left of it, such as "CaO".'),
    moisture: optional(wetMoisture("Moisture of the sample as weighed in, wet basis [fraction]."), "none"),
    u: optional(lossUncertainty("Standard uncertainty of the loss [fraction]."), "any purity above 1 is called so"),
    what: optional(choice("What to answer.", ["purity", "u", "verdict"]), '"purity"'),
  },
  result: { about: "Purity", unit: "fraction" },
  compute: ({ loss, start, residue, moisture = 0, u, what = "purity" }): Shown => {
    const found = purityFromLoss(loss, start, residue, moisture, u);
    if (what === "verdict") return verdict(found);
    if (what === "purity") return found.purity;
    if (found.uncertainty === undefined) throw uNeeded();
    return found.uncertainty;
  },
  working: ({ loss, start, residue, moisture = 0, u }) => {
    const found = purityFromLoss(loss, start, residue, moisture, u);
    const { decomposition, dryLoss, purity, uncertainty } = found;
    const theory = inFigures(decomposition.loss);
    return [
      ...steps(decomposition),
      `loss of the dry sample = (${inFigures(loss)} - ${inFigures(moisture)}) / (1 - ${inFigures(moisture)}) = ${inFigures(dryLoss)}`,
      `purity = ${inFigures(dryLoss)} / ${theory} = ${inFigures(purity)}`,
      ...(uncertainty === undefined || u === undefined
        ? []
        : [`standard uncertainty = ${inFigures(u)} / ((1 - ${inFigures(moisture)}) × ${theory}) = ${inFigures(uncertainty)}`]),
      verdict(found),
    ];
  },
  examples: [
    {
      cell: '=RETORT.PURITY.FROMLOSS(0.42, "CaCO3", "CaO")',
      gives: 0.955170987752505,
      about: "A limestone that loses 42 % holds at most 95.5 % CaCO3.",
    },
    { cell: '=RETORT.PURITY.FROMLOSS(0.42, "CaCO3", "CaO", 0.01, 0.002, "u")', gives: 0.0045943770454666 },
    {
      cell: '=RETORT.PURITY.FROMLOSS(0.45, "CaCO3", "CaO", 0, 0.002, "verdict")',
      gives: "above 1 (1.023): more left than the pure substance can lose; look for moisture, another carbonate or hydrate, organic matter, spitting",
    },
  ],
  source: `p = (loss - moisture) / (1 - moisture) / theoretical loss; atomic weights ${EDITION}. Clay, organic matter and other carbonates lose mass too.`,
  caution: DECOMPOSING,
});

const COVERAGE = 2;

function verdict({ purity, uncertainty = 0 }: Purity): string {
  if (purity > 1 + COVERAGE * uncertainty) return purityAboveOne(purity);
  return uncertainty > 0 && purity >= 1 - COVERAGE * uncertainty ? purityNotToldFromOne(purity) : purityBelowOne(purity);
}
