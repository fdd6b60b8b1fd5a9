import { burning } from "../../src/functions/burning";
import { everyFunction } from "../../src/functions/catalogue";
import { compound } from "../../src/functions/compound";
import { evidenceFiles } from "./evidenceFiles";

// What the pane, the help pages and the calculation record call an answer, and the unit they give it. Those of a new function stand in its
// file of tests/functions/evidence.
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

const inFiles = new Map(evidenceFiles.map(({ name, answer }) => [name, answer]));

test("every function of a formula or of burning names its answer and its unit", () => {
  const named = [...compound, ...burning].map(({ name, result }) => [name, [result.about, result.unit]] as const);
  const lacking = named
    .filter(([name]) => RESULTS[name] === undefined && !inFiles.has(name))
    .map(([name, answer]) => `${name}: add answer: ${JSON.stringify(answer)} to its file in tests/functions/evidence`);
  expect(lacking).toEqual([]);
  expect(named.filter(([name]) => !inFiles.has(name))).toEqual(Object.entries(RESULTS));
});

test("every evidence file names the answer of its function and the unit", () => {
  const catalogue = new Map(everyFunction.map(({ name, result }) => [name, [result.about, result.unit]]));
  expect([...inFiles].map(([name]) => [name, catalogue.get(name)])).toEqual([...inFiles]);
});
