import { EDITION } from "../../chemistry/atomicWeights";
import type { Decomposition } from "../../decomposition/decompose";
import { COVERAGE, decompositionsOf, mixtureFromLoss, SLACK, WELL_APART, type MixtureShare } from "../../decomposition/mixtureFromLoss";
import { choice } from "../../inputs/choice";
import { lossUncertainty } from "../../inputs/kinds/lossUncertainty";
import { presentMassFraction } from "../../inputs/kinds/shares";
import { numberText } from "../../inputs/numberText";
import { formulaText } from "../../inputs/kinds/words";
import { optional } from "../../inputs/optional";
import { MIXTURE_HOLDS, mixtureIllConditioned, uNeeded } from "../../problems/functions/decompositionProblems";
import { lossNotBetween } from "../../problems/sharing/plainCellProblems";
import { cellFunction, type Shown } from "../cellFunction";
import { inFigures } from "../inFigures";
import { lossInCells } from "../inCells/lossInCells";
import { problemInCells } from "../inCells/problemInCells";
import { textInCells } from "../inCells/sentenceInCells";
import { isTypedText, typedTextOf } from "../inCells/typedInCells";
import { isGivenInCells, numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { wordInCells } from "../wordInCells";
import { DECOMPOSING } from "./cautions";

export const mixtureFromLossFunction = cellFunction({
  name: "MIXTURE.FROMLOSS",
  summary: "Share of the first of two substances in their dry mixture, from its loss on heating [fraction]. Tells little where both lose alike.",
  inputs: {
    loss: presentMassFraction("Loss of the dry mixture on heating [fraction]."),
    start1: formulaText('First substance, such as "CaCO3".'),
    residue1: formulaText('What is left of it, such as "CaO".'),
    start2: formulaText('Second substance, such as "MgCO3".'),
    residue2: formulaText('What is left of it, such as "MgO".'),
    u: optional(lossUncertainty("Standard uncertainty of the loss [fraction]."), "a loss outside both is refused"),
    what: optional(choice("What to answer.", ["share", "u", "verdict"]), '"share"'),
  },
  result: { about: "Share of the first substance", unit: "fraction" },
  compute: ({ what = "share", ...read }): Shown => {
    const found = mixtureFromLoss(read);
    if (what === "verdict") return verdict(found);
    if (what === "share") return found.share;
    if (found.uncertainty === undefined) throw uNeeded();
    return found.uncertainty;
  },
  refusesInCells: ({ loss, start1, residue1, start2, residue2, u }) => {
    const typed = typedMixture({ start1, residue1, start2, residue2 });
    if (typed === undefined) return [];
    const { loss1, loss2 } = typed;
    const spread = `(${COVERAGE}*${numberInCells(u, 0)}+${numberText(SLACK)})`;
    const [least, most] = [numberText(Math.min(loss1, loss2)), numberText(Math.max(loss1, loss2))];
    return [{ when: `(${operand(loss)}<${least}-${spread})+(${operand(loss)}>${most}+${spread})`, says: lossNotBetween }];
  },
  inManyCells: ({ loss, start1, residue1, start2, residue2, u, what }) => {
    const typed = typedMixture({ start1, residue1, start2, residue2 });
    if (typed === undefined) return undefined;
    const [first, second] = [typed.first, typed.second].map(lossInCells);
    const missing = problemInCells(uNeeded());
    const isGiven = isGivenInCells(u);
    const uncertainty = `${numberInCells(u, 0)}/ABS(${first}-${second})`;
    return wordInCells(
      what,
      [
        ["u", isGiven === "0" ? missing : isGiven === "1" ? uncertainty : `IF(${isGiven},${uncertainty},${missing})`],
        ["verdict", textInCells(verdict(typed))],
      ],
      `(${operand(loss)}-${second})/(${first}-${second})`,
    );
  },
  working: ({ start1, start2, loss, u, ...rest }) => {
    const found = mixtureFromLoss({ start1, start2, loss, u, ...rest });
    const { loss1, loss2, share, uncertainty } = found;
    const [first, second] = [inFigures(loss1), inFigures(loss2)];
    return [
      `theoretical losses: ${first} of ${start1.trim()}, ${second} of ${start2.trim()}`,
      `share of the first = (${inFigures(loss)} - ${second}) / (${first} - ${second}) = ${inFigures(share)}`,
      ...(uncertainty === undefined || u === undefined
        ? []
        : [`standard uncertainty = ${inFigures(u)} / |${first} - ${second}| = ${inFigures(uncertainty)}`]),
      verdict(found),
    ];
  },
  examples: [
    {
      cell: '=RETORT.MIXTURE.FROMLOSS(0.3, "CaCO3", "CaO", "Ca(OH)2", "CaO")',
      gives: 0.289244873126718,
      about: "Slaked lime gone stale: 29 % of it is carbonate again.",
    },
    {
      cell: '=RETORT.MIXTURE.FROMLOSS(0.48, "CaCO3", "CaO", "MgCO3", "MgO", "", "verdict")',
      gives:
        "ill-conditioned: the two losses differ by only 0.08226, so an error of 0.001 in the loss is 0.01216 in the share; holds only if the sample is made of these two alone, dry",
    },
  ],
  source: `x = (loss - w2) / (w1 - w2) with the theoretical losses; atomic weights ${EDITION}. Below a difference of ${WELL_APART} it warns (common practice, no source).`,
  caution: DECOMPOSING,
});

type TypedMixture = Readonly<Record<"first" | "second", Decomposition>> & Pick<MixtureShare, "loss1" | "loss2">;

/** Both decompositions where all four formulas stand in the call; undefined else. @throws InputProblem */
function typedMixture(texts: Readonly<Record<"start1" | "residue1" | "start2" | "residue2", string>>): TypedMixture | undefined {
  const given = [texts.start1, texts.residue1, texts.start2, texts.residue2];
  if (!given.every(isTypedText)) return undefined;
  const [start1, residue1, start2, residue2] = given.map(typedTextOf) as [string, string, string, string];
  return decompositionsOf({ start1, residue1, start2, residue2 });
}

function verdict({ loss1, loss2 }: Pick<MixtureShare, "loss1" | "loss2">): string {
  const apart = Math.abs(loss1 - loss2);
  return apart < WELL_APART ? `${mixtureIllConditioned(apart)}; ${MIXTURE_HOLDS}` : MIXTURE_HOLDS;
}
