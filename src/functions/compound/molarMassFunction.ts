import { molarMass } from "../../chemistry/molarMass";
import { parseFormula } from "../../chemistry/parseFormula";
import { formulaText } from "../../inputs/kinds/words";
import { cellFunction } from "../cellFunction";
import { molarMassWorking } from "./molarMassWorking";
import { WEIGHTS_SOURCE } from "./weightsSource";

export const molarMassFunction = cellFunction({
  name: "MOLARMASS",
  summary: "Molar mass of a compound from its chemical formula [g/mol].",
  inputs: { formula: formulaText('Chemical formula, such as "CaCO3" or "CuSO4·5H2O".') },
  result: { about: "Molar mass", unit: "g/mol" },
  compute: ({ formula }) => molarMass(parseFormula(formula)),
  working: ({ formula }) => molarMassWorking(parseFormula(formula)),
  examples: [
    { cell: '=RETORT.MOLARMASS("CaCO3")', gives: 100.086 },
    { cell: '=RETORT.MOLARMASS("CuSO4.5H2O")', gives: 249.677, about: "A full stop before the water of a hydrate is read as the hydrate dot." },
    { cell: '=RETORT.MOLARMASS("CH1.44O0.66")', gives: 24.02186, about: "Wood, per mole of carbon: counts may be decimals." },
  ],
  source: WEIGHTS_SOURCE,
});
