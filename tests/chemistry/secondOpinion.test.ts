import { MF } from "mf-parser";
import { molarMass } from "../../src/chemistry/molarMass";
import { parseFormula } from "../../src/chemistry/parseFormula";
import { hydrates, withoutDots } from "./realCompounds";

// eslint-disable-next-line @typescript-eslint/no-require-imports -- the package has no types
const chemicalFormula = require("chemical-formula") as (formula: string) => Record<string, number>;

// mf-parser works its weights out from isotope masses and abundances, and so differs from the standard table by up to 150 parts in a
// million for sulfur (32.0648 against the conventional 32.06), lead and zinc, and by a few for the rest.
// It takes a full stop right behind a digit for a decimal point, and reads no ·, so hydrates are handed to it with spaces around the dot.
const RELATIVE_TOLERANCE = 2e-4;

test("there are more than 300 compounds to compare", () => {
  expect(withoutDots.length + hydrates.length).toBeGreaterThan(300);
});

test.each(withoutDots)("parseFormula counts the atoms of %s as chemical-formula does", (text) => {
  expect(Object.fromEntries(parseFormula(text).atoms)).toEqual(chemicalFormula(text));
});

test.each([...withoutDots, ...hydrates])("molarMass of %s agrees with mf-parser within 2 parts in 10,000", (text) => {
  const theirs = new MF(text.replace("·", " . ")).getInfo().mass;
  expect(Math.abs(molarMass(parseFormula(text)) / theirs - 1)).toBeLessThan(RELATIVE_TOLERANCE);
});

test.each(hydrates)("parseFormula reads %s with a full stop, a bullet or a star for the dot as the same atoms", (text) => {
  for (const dot of [".", "•", "∙", "⋅", "*", " · "]) expect(parseFormula(text.replace("·", dot)).atoms).toEqual(parseFormula(text).atoms);
});
