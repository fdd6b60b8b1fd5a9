import { burning } from "../../../src/functions/burning";
import { compound } from "../../../src/functions/compound";

// What the pane, the help pages and the calculation record call an answer, and the unit they give it.
const RESULTS: Readonly<Record<string, readonly [about: string, unit: string]>> = {
  MOLARMASS: ["Molar mass", "g/mol"],
  ATOMS: ["Atoms of the compound", ""],
  "FORMULA.CHECK": ["How the formula is read", ""],
  OXYGENDEMAND: ["Oxygen demand", "g/g"],
  "OXYGENDEMAND.ULTIMATE": ["Oxygen demand", "g/g"],
  AIRDEMAND: ["Air demand", "g/g"],
  "BURN.EQUATION": ["Reaction", ""],
  "BURN.PRODUCTS": ["Products of burning", ""],
  "BURN.COMPARE": ["Charring against burning", ""],
};

test("every function of a formula or of burning names its answer and its unit", () => {
  const named = [...compound, ...burning].map(({ name, result }) => [name, [result.about, result.unit]]);
  expect(named).toEqual(Object.entries(RESULTS));
});
