import { EDITION } from "../../chemistry/atomicWeights";
import { purityFromLoss, type Purity } from "../../decomposition/purityFromLoss";
import { choice } from "../../inputs/choice";
import { lossUncertainty } from "../../inputs/kinds/lossUncertainty";
import { presentMassFraction, wetMoisture } from "../../inputs/kinds/shares";
import { formulaText } from "../../inputs/kinds/words";
import { optional } from "../../inputs/optional";
import { LOSS_FIGURES, purityAboveOne, purityBelowOne, purityNotToldFromOne, uNeeded } from "../../problems/functions/decompositionProblems";
import { moistureAboveWholeLoss } from "../../problems/sharing/plainCellProblems";
import { plainNumber } from "../../problems/quoted";
import { cellFunction, type Shown } from "../cellFunction";
import { inFigures } from "../inFigures";
import { lossInCells } from "../inCells/lossInCells";
import { problemInCells } from "../inCells/problemInCells";
import { sentenceInCells, significantInCells } from "../inCells/sentenceInCells";
import { isTypedText, typedTextOf } from "../inCells/typedInCells";
import { isGivenInCells, numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { wordInCells } from "../wordInCells";
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
  refusesInCells: ({ loss, moisture }) => [{ when: `${numberInCells(moisture, 0)}>${operand(loss)}`, says: moistureAboveWholeLoss }],
  inManyCells: ({ loss, start, residue, moisture, u, what }) => {
    if (!isTypedText(start) || !isTypedText(residue)) return undefined;
    const { decomposition } = purityFromLoss(1, typedTextOf(start), typedTextOf(residue), 0, undefined);
    const [theory, water] = [lossInCells(decomposition), numberInCells(moisture, 0)];
    const purity = `(${operand(loss)}-${water})/(1-${water})/${theory}`;
    const uncertainty = `${numberInCells(u, 0)}/((1-${water})*${theory})`;
    const isGiven = isGivenInCells(u);
    const missing = problemInCells(uNeeded());
    return wordInCells(
      what,
      [
        ["u", isGiven === "0" ? missing : isGiven === "1" ? uncertainty : `IF(${isGiven},${uncertainty},${missing})`],
        ["verdict", verdictInCells(`(${purity})`, isGiven === "0" ? "0" : uncertainty)],
      ],
      purity,
    );
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
// A share that stands once in each sentence.
const SAMPLE = 0.4567;

/** The same of the text of a purity, in a cell formula; an uncertainty that is not given is 0 there. */
function verdictInCells(purity: string, uncertainty: string): string {
  const [above, notTold, below] = [purityAboveOne, purityNotToldFromOne, purityBelowOne].map((sentence) =>
    sentenceInCells(sentence(SAMPLE), plainNumber(SAMPLE, LOSS_FIGURES), significantInCells(purity, LOSS_FIGURES)),
  );
  const spread = `${COVERAGE}*${uncertainty}`;
  const under = uncertainty === "0" ? below : `IF(${uncertainty}>0,IF(${purity}>=1-${spread},${notTold},${below}),${below})`;
  return `IF(${purity}>1+${spread},${above},${under})`;
}

function verdict({ purity, uncertainty = 0 }: Purity): string {
  if (purity > 1 + COVERAGE * uncertainty) return purityAboveOne(purity);
  return uncertainty > 0 && purity >= 1 - COVERAGE * uncertainty ? purityNotToldFromOne(purity) : purityBelowOne(purity);
}
