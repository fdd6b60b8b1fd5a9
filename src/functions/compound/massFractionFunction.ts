import { EDITION } from "../../chemistry/atomicWeights";
import { GROUPS, massFraction } from "../../chemistry/massFraction";
import { molarMass } from "../../chemistry/molarMass";
import { choice } from "../../inputs/choice";
import { numberText } from "../../inputs/numberText";
import { formulaText } from "../../inputs/kinds/words";
import { optional } from "../../inputs/optional";
import { countedByScarcest, countsNone, holdsNone } from "../../problems/functions/compoundProblems";
import { plainNumber } from "../../problems/quoted";
import { cellFunction } from "../cellFunction";
import { molarMassInCells } from "../inCells/formulaInCells";
import { orProblemInCells } from "../inCells/problemInCells";
import { isTypedText, typedTextOf } from "../inCells/typedInCells";
import { inFigures } from "../inFigures";
import { wordInCells } from "../wordInCells";

/** The share, refused where there is none: a part from nowhere is a slip, and its 0 would be taken for a result. @throws InputProblem */
function shareOf({ formula, part }: Readonly<Record<"formula" | "part", string>>): number {
  const { count, fraction } = massFraction(formula, part);
  if (count === 0) throw holdsNone(part.trim(), formula.trim());
  return fraction;
}

export const massFractionFunction = cellFunction({
  name: "MASSFRACTION",
  summary: "Share of a compound's mass that is one element, or one group such as the water of a hydrate [fraction]; or how often it holds it.",
  inputs: {
    formula: formulaText('Formula of the compound, such as "CuSO4·5H2O".'),
    part: {
      ...formulaText('Element or group, such as "Cu" or "H2O".'),
      detail: `Groups: ${GROUPS.join(", ")}, each counted by its scarcest atom. The share of what is not there is refused; its count is 0.`,
    },
    what: optional(choice<"fraction" | "count">("What to answer.", ["fraction", "count"]), '"fraction"'),
  },
  result: { about: "Mass fraction", unit: "fraction" },
  compute: (asked) => (asked.what === "count" ? massFraction(asked.formula, asked.part).count : shareOf(asked)),
  inManyCells: ({ formula: text, part: partText, what }) => {
    if (!isTypedText(text) || !isTypedText(partText)) return undefined;
    const { formula, needed, count } = massFraction(typedTextOf(text), typedTextOf(partText));
    const fraction = orProblemInCells(() => {
      shareOf({ formula: typedTextOf(text), part: typedTextOf(partText) });
      return `${numberText(count)}*${molarMassInCells(needed)}/${molarMassInCells(formula.atoms)}`;
    });
    return wordInCells(what, [["count", numberText(count)]], fraction);
  },
  working: ({ formula: text, part: partText }) => {
    const { formula, part, byAtom, count, fraction } = massFraction(text, partText);
    const name = partText.trim();
    if (count === 0) return [...formula.notes, countsNone(name)];
    const one = molarMass({ atoms: new Map(byAtom.map(([symbol, , needed]) => [symbol, needed])) }, "part");
    return [
      ...formula.notes,
      ...part.notes,
      ...byAtom.map(([symbol, held, needed]) => `count by ${symbol} = ${plainNumber(held)} / ${plainNumber(needed)} = ${inFigures(held / needed)}`),
      ...(byAtom.length > 1 ? [countedByScarcest(name)] : []),
      `mass fraction = ${inFigures(count)} × ${plainNumber(one)} / ${plainNumber(molarMass(formula))} = ${inFigures(fraction)}`,
    ];
  },
  examples: [
    { cell: '=RETORT.MASSFRACTION("CuSO4.5H2O", "H2O")', gives: 0.360766109813879, about: "Five waters in bluestone." },
    {
      cell: '=RETORT.MASSFRACTION("KAl(SO4)2.12H2O", "SO4", "count")',
      gives: 2,
      about: "Alum holds two sulfates: its scarcest atom there is sulfur.",
    },
    { cell: '=RETORT.MASSFRACTION("CaCO3", "Ca")', gives: 0.400435625362189 },
  ],
  source: `count × M(part) / M(compound), atomic weights ${EDITION}. A formula does not say which atoms belong together, so a group is counted by its scarcest atom.`,
});
