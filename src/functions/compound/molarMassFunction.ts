import { atomicWeight, EDITION } from "../../chemistry/atomicWeights";
import type { Formula } from "../../chemistry/Formula";
import { molarMass } from "../../chemistry/molarMass";
import { molarMassOf } from "../../chemistry/molarMassOf";
import { parseFormula } from "../../chemistry/parseFormula";
import { formulaText } from "../../inputs/kinds/words";
import { plainNumber } from "../../problems/quoted";
import { cellFunction } from "../cellFunction";
import { molarMassInCells, typedFormulaOf } from "../inCells/formulaInCells";
import { inFigures } from "../inFigures";

export const WEIGHTS_SOURCE = `Atomic weights ${EDITION}: Prohaska et al., Pure Appl. Chem. 94 (2022) 573, table 1, doi 10.1515/pac-2019-0603; the abridged value where the standard is an interval. Isotopes: AME 2020, from memory.`;

export const molarMassFunction = cellFunction({
  name: "MOLARMASS",
  summary: "Molar mass of a compound from its chemical formula [g/mol].",
  inputs: { formula: formulaText('Chemical formula, such as "CaCO3" or "CuSO4·5H2O".') },
  result: { about: "Molar mass", unit: "g/mol" },
  compute: ({ formula }) => molarMassOf(formula),
  working: ({ formula }) => molarMassWorking(parseFormula(formula)),
  inManyCells: ({ formula }) => {
    const parsed = typedFormulaOf(formula);
    return parsed && molarMassInCells(parsed.atoms);
  },
  examples: [
    { cell: '=RETORT.MOLARMASS("CaCO3")', gives: 100.086 },
    { cell: '=RETORT.MOLARMASS("CuSO4.5H2O")', gives: 249.677, about: "A full stop before the water of a hydrate is read as the hydrate dot." },
    { cell: '=RETORT.MOLARMASS("CH1.44O0.66")', gives: 24.02186, about: "Wood, per mole of carbon: counts may be decimals." },
  ],
  source: WEIGHTS_SOURCE,
});

/** The sum with the numbers put in, one line an element: `Ca 1 × 40.078 = 40.078 g/mol`. */
export const molarMassWorking = (formula: Formula): readonly string[] => [
  ...[...formula.atoms].map(([symbol, count]) => {
    const weight = atomicWeight(symbol);
    return `${symbol} ${plainNumber(count)} × ${plainNumber(weight)} = ${inFigures(count * weight)} g/mol`;
  }),
  `sum ${inFigures(molarMass(formula))} g/mol, weights ${EDITION}`,
  ...formula.notes,
];
