import { EDITION } from "../../chemistry/atomicWeights";
import { molarMass } from "../../chemistry/molarMass";
import { decompose, type Decomposition } from "../../decomposition/decompose";
import { decompositionEquation, solidsEquation } from "../../decomposition/decompositionEquation";
import { lossUncertaintyOfWeights } from "../../decomposition/lossFromWeights";
import { oxygenBalance } from "../../decomposition/oxygenBalance";
import { choice } from "../../inputs/choice";
import { numberText } from "../../inputs/numberText";
import { leavingText } from "../../inputs/kinds/leaving";
import { formulaText } from "../../inputs/kinds/words";
import { optional } from "../../inputs/optional";
import { GAINS, NOTHING_LEAVES, oxygenInWords } from "../../problems/functions/decompositionProblems";
import { plainNumber } from "../../problems/quoted";
import { cellFunction, type Shown } from "../cellFunction";
import { inFigures } from "../inFigures";
import { lossInCells } from "../inCells/lossInCells";
import { orProblemInCells } from "../inCells/problemInCells";
import { textInCells } from "../inCells/sentenceInCells";
import { isTypedText, typedTextOf } from "../inCells/typedInCells";
import { wordInCells } from "../wordInCells";
import { DECOMPOSING } from "./cautions";

export const theoreticalLossFunction = cellFunction({
  name: "THEORETICALLOSS",
  summary: "Theoretical loss on heating a compound to a stated residue, per gram of the start [fraction]; below 0 where it gains oxygen.",
  inputs: {
    start: formulaText('Formula of what is heated, such as "CaCO3".'),
    residue: {
      ...formulaText('Formula of what is left, such as "CaO"; several as "CaCO3 + MgO".'),
      detail: "For several steps give each residue in a cell of its own: each loss is of the first start, and their differences are the steps.",
    },
    leaves: {
      ...optional(leavingText('What leaves though it is a metal, such as "Hg".'), "no metal leaves"),
      detail: "Also for B, Si, P, As and Te.",
    },
    what: {
      ...optional(choice("What to answer.", ["loss", "u", "equation", "oxygen"]), '"loss"'),
      detail: '"u" is the standard uncertainty from the atomic weights, "equation" the balanced reaction, "oxygen" its oxygen balance in words.',
    },
  },
  result: { about: "Theoretical loss", unit: "fraction" },
  compute: ({ start, residue, leaves, what = "loss" }): Shown => {
    const decomposition = decompose(start, residue, leaves);
    if (what === "u") return lossUncertaintyOfWeights(decomposition);
    if (what === "equation") return decompositionEquation(decomposition);
    if (what === "oxygen") return oxygenInWords(oxygenBalance(decomposition).oxygen, start.trim());
    return decomposition.loss;
  },
  inManyCells: ({ start, residue, leaves, what }) => {
    if (!isTypedText(start) || !isTypedText(residue) || !(leaves === "" || isTypedText(leaves))) return undefined;
    const decomposition = decompose(typedTextOf(start), typedTextOf(residue), leaves === "" ? undefined : typedTextOf(leaves));
    const oxygen = (): string => oxygenInWords(oxygenBalance(decomposition).oxygen, typedTextOf(start).trim());
    return wordInCells(
      what,
      [
        ["u", orProblemInCells(() => numberText(lossUncertaintyOfWeights(decomposition)))],
        ["equation", orProblemInCells(() => textInCells(decompositionEquation(decomposition)))],
        ["oxygen", orProblemInCells(() => textInCells(oxygen()))],
      ],
      lossInCells(decomposition),
    );
  },
  working: ({ start, residue, leaves }) => steps(decompose(start, residue, leaves)),
  examples: [
    { cell: '=RETORT.THEORETICALLOSS("CaCO3", "CaO")', gives: 0.439711847810883, about: "Limestone burnt to lime loses 44 %." },
    {
      cell: '=RETORT.THEORETICALLOSS("FeCO3", "Fe2O3")',
      gives: 0.31082060887504,
      about: "Siderite in air takes up oxygen; to FeO it would lose 38 %.",
    },
    { cell: '=RETORT.THEORETICALLOSS("FeCO3", "Fe2O3", "", "equation")', gives: "4 FeCO3 + O2 → 2 Fe2O3 + 4 CO2" },
    {
      cell: '=RETORT.THEORETICALLOSS("CaCO3", "CaO", "", "u")',
      gives: 1.26550970468563e-5,
      about: "Calcium and oxygen stand on both sides and count once.",
    },
    { cell: '=RETORT.THEORETICALLOSS("HgO·CaCO3", "CaO", "Hg")', gives: 0.8229205152252926, about: "A metal that leaves has to be named." },
  ],
  source: `Conservation of each element: 1 - n M(residue) / M(start). Atomic weights ${EDITION}, their uncertainty as Possolo et al., Pure Appl. Chem. 90 (2018) 395. Oxygen balance to CO2, H2O, SO2, N2 and HX.`,
  caution: DECOMPOSING,
});

/** `C 1, O 2`, of oxygen what leaves net. */
const listed = (atoms: ReadonlyMap<string, number>): string => [...atoms].map(([symbol, count]) => `${symbol} ${inFigures(count)}`).join(", ");

/** The working lines of a loss; PURITY.FROMLOSS and its kin repeat them. */
export function steps(decomposition: Decomposition): readonly string[] {
  const { start, residues, gone, loss } = decomposition;
  const whole = molarMass(start, "start");
  const { gone: left, inNamed, oxygen } = oxygenBalance(decomposition);
  const parts = residues.map(({ formula, perStart }) => `${inFigures(perStart)} × ${plainNumber(molarMass(formula, "residue"))}`);
  const water = left.X === 0 ? inFigures(left.H) : `(${inFigures(left.H)} - ${inFigures(Math.min(left.X, left.H))})`;
  const oxides = inNamed === 0 ? "" : ` - ${inFigures(inNamed)}`;
  return [
    ...start.notes,
    ...residues.flatMap(({ formula }) => formula.notes),
    `solids: ${solidsEquation(decomposition)}`,
    `left = (${parts.join(" + ")}) / ${plainNumber(whole)} = ${inFigures(1 - loss)} g per g`,
    `theoretical loss = 1 - ${inFigures(1 - loss)} = ${inFigures(loss)}`,
    ...(loss < 0 ? [GAINS] : gone.size === 0 ? [NOTHING_LEAVES] : []),
    ...(gone.size === 0 ? [] : [`leaves, for one formula of the start: ${listed(gone)}`]),
    `oxygen balance = ${inFigures(left.O)} - 2 × ${inFigures(left.C)} - ${water} / 2 - 2 × ${inFigures(left.S)}${oxides} = ${inFigures(oxygen)}`,
    oxygenInWords(oxygen, start.text.trim()),
    `standard uncertainty from the atomic weights, shared elements counted once: ${inFigures(lossUncertaintyOfWeights(decomposition))}`,
  ];
}
