import { atomicWeight, EDITION } from "../../chemistry/atomicWeights";
import type { Formula } from "../../chemistry/Formula";
import { molarMass } from "../../chemistry/molarMass";
import { plainNumber } from "../../problems/quoted";
import { inFigures } from "../inFigures";

/** The sum with the numbers put in, one line an element: `Ca 1 × 40.078 = 40.078 g/mol`. */
export const molarMassWorking = (formula: Formula): readonly string[] => [
  ...[...formula.atoms].map(([symbol, count]) => {
    const weight = atomicWeight(symbol);
    return `${symbol} ${plainNumber(count)} × ${plainNumber(weight)} = ${inFigures(count * weight)} g/mol`;
  }),
  `sum ${inFigures(molarMass(formula))} g/mol, weights ${EDITION}`,
  ...formula.notes,
];
