import { EDITION } from "../../chemistry/atomicWeights";
import { atomicWeightLimit, atomicWeightUncertainty } from "../../chemistry/atomicWeightUncertainty";
import { molarMassUncertainty } from "../../chemistry/molarMassUncertainty";
import { parseFormula } from "../../chemistry/parseFormula";
import { numberText } from "../../inputs/numberText";
import { formulaText } from "../../inputs/kinds/words";
import { plainNumber } from "../../problems/quoted";
import { cellFunction } from "../cellFunction";
import { typedFormulaOf } from "../inCells/formulaInCells";
import { inFigures } from "../inFigures";

/** The square of an element's part of the uncertainty, written out: "(3*0.001)^2/3". */
const squareInCells = (count: number, symbol: string): string => `(${numberText(count)}*${numberText(atomicWeightLimit(symbol))})^2/3`;

export const molarMassUFunction = cellFunction({
  name: "MOLARMASS.U",
  summary: "Standard uncertainty of a molar mass, from that of the atomic weights [g/mol].",
  inputs: { formula: formulaText('Chemical formula, such as "CaCO3" or "CuSO4·5H2O".') },
  result: { about: "Standard uncertainty of the molar mass (k = 1)", unit: "g/mol" },
  compute: ({ formula }) => molarMassUncertainty(parseFormula(formula)),
  inManyCells: ({ formula }) => {
    const parsed = typedFormulaOf(formula);
    return parsed && `SQRT(${[...parsed.atoms].map(([symbol, count]) => squareInCells(count, symbol)).join("+")})`;
  },
  working: ({ formula: text }) => {
    const formula = parseFormula(text);
    const parts = [...formula.atoms].map(([symbol, count]) => ({ symbol, count, u: count * atomicWeightUncertainty(symbol) }));
    return [
      ...formula.notes,
      ...parts.map(
        ({ symbol, count, u }) => `${symbol} ${plainNumber(count)} × ${plainNumber(atomicWeightLimit(symbol))} / sqrt(3) = ${inFigures(u)} g/mol`,
      ),
      `standard uncertainty = sqrt(${parts.map(({ u }) => `${inFigures(u)}^2`).join(" + ")}) = ${inFigures(molarMassUncertainty(formula))} g/mol`,
    ];
  },
  examples: [
    { cell: '=RETORT.MOLARMASS.U("CaCO3")', gives: 0.0031091263510296 },
    { cell: '=RETORT.MOLARMASS.U("CuSO4.5H2O")', gives: 0.0128322510366134 },
  ],
  source: `The limits of the atomic weights, ${EDITION}, taken as rectangular: u = limit / sqrt(3), atoms of one element fully correlated (Possolo et al., Pure Appl. Chem. 90 (2018) 395).`,
});
