import { burnEquation } from "../../chemistry/burning/burnEquation";
import { parseFormula } from "../../chemistry/parseFormula";
import { formulaText } from "../../inputs/kinds/words";
import { cellFunction } from "../cellFunction";
import { textInCells } from "../inCells/sentenceInCells";
import { isTypedText, typedTextOf } from "../inCells/typedInCells";
import { OXIDISERS } from "./cautions";

export const burnEquationFunction = cellFunction({
  name: "BURN.EQUATION",
  summary: "The balanced reaction of complete burning as text, in smallest whole numbers where the formula's counts are whole.",
  inputs: { formula: formulaText('Chemical formula, such as "C10H16".') },
  result: { about: "Reaction", unit: "" },
  compute: ({ formula }) => burnEquation(parseFormula(formula)),
  inManyCells: ({ formula }) => (isTypedText(formula) ? textInCells(burnEquation(parseFormula(typedTextOf(formula)))) : undefined),
  working: ({ formula }) => parseFormula(formula).notes,
  examples: [
    { cell: '=RETORT.BURN.EQUATION("C10H16")', gives: "C10H16 + 14 O2 → 10 CO2 + 8 H2O", about: "Limonene, from orange peel." },
    { cell: '=RETORT.BURN.EQUATION("CH1.44O0.66")', gives: "CH1.44O0.66 + 1.03 O2 → CO2 + 0.72 H2O", about: "Wood, for one formula unit." },
  ],
  source: "Conservation of each element in complete burning to the products that OXYGENDEMAND lists. Nitrogen oxides are traces and not counted.",
  caution: OXIDISERS,
});
