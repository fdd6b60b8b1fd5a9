import { atomicWeight } from "../../chemistry/atomicWeights";
import type { Formula } from "../../chemistry/Formula";
import { molarMass } from "../../chemistry/molarMass";
import { parseFormula } from "../../chemistry/parseFormula";
import { formulaText } from "../../inputs/kinds/words";
import { tableFunction, type Shown } from "../cellFunction";
import { label, molarMassInCells, typedFormulaOf } from "../inCells/formulaInCells";
import { molarMassWorking, WEIGHTS_SOURCE } from "./molarMassFunction";

const HEADINGS = ["Symbol", "Count", "Mass [g/mol]", "Mass fraction"] as const;

export const atomsFunction = tableFunction({
  name: "ATOMS",
  summary: "What a compound is made of, as a table: each symbol, its count, its mass [g/mol] and its share of the molar mass [fraction].",
  inputs: { formula: formulaText('Chemical formula, such as "CaCO3" or "CuSO4·5H2O".') },
  result: { about: "Atoms of the compound", unit: "" },
  computeTable: ({ formula }) => table(parseFormula(formula)),
  working: ({ formula }) => molarMassWorking(parseFormula(formula)),
  inManyCells: ({ formula }) => {
    const atoms = typedFormulaOf(formula)?.atoms;
    if (atoms === undefined) return undefined;
    const whole = molarMassInCells(atoms);
    return [
      HEADINGS.map(label),
      ...[...atoms].map(([symbol, count]) => {
        const own = molarMassInCells(new Map([[symbol, count]]));
        return [label(symbol), String(count), own, `${own}/${whole}`];
      }),
    ];
  },
  examples: [
    {
      cell: '=RETORT.ATOMS("H2O")',
      gives: [
        ["Symbol", "Count", "Mass [g/mol]", "Mass fraction"],
        ["H", 2, 2.016, 0.111906744379683],
        ["O", 1, 15.999, 0.888093255620316],
      ],
    },
  ],
  source: WEIGHTS_SOURCE,
});

function table(formula: Formula): readonly (readonly Shown[])[] {
  const whole = molarMass(formula);
  const rows = [...formula.atoms].map(([symbol, count]) => {
    const mass = count * atomicWeight(symbol);
    return [symbol, count, mass, mass / whole];
  });
  return [HEADINGS, ...rows];
}
