import { canBalance } from "../../../../src/chemistry/usualStates";
import { molarMass } from "../../../../src/chemistry/molarMass";
import { parseFormula } from "../../../../src/chemistry/parseFormula";
import { hydrates } from "../../realCompounds";

// Every hydrate of the list whose salt ends in a count of one digit, so that a lost dot leaves no trace.
const salts = hydrates.filter((text) => /[A-Za-z)\]][2-9]·[1-9]\d?H2O$/.test(text));
const balanced = salts.filter((text) => canBalance(parseFormula(text).atoms, 0));

test("there are hydrates enough to lose their dots", () => {
  expect(balanced.length).toBeGreaterThan(15);
});

test.each(balanced)("parseFormula refuses %s without its dot, and names the water", (text) => {
  const lost = text.replace("·", "");
  const water = text.slice(text.indexOf("·") + 1);
  expect(() => parseFormula(lost)).toThrow(
    new Error(
      `formula: "${water}" at character ${text.indexOf("·") + 1} of "${lost}" is joined to the count before it. Type · before the water of a hydrate.`,
    ),
  );
});

test.each(["CuS(O)45H2O", "C6H12O6", "Al2Si2O5(OH)4", "HAuCl4", "C12H22O11", "Fe4O22H2O"])("parseFormula reads %s as it stands", (text) => {
  expect(molarMass(parseFormula(text))).toBeGreaterThan(0);
});

// Taking such a mark out, as a mark that has no place would ask for, makes CuSO45H2O of it.
test.each(["_", ";", ":", "~", "|", "'", "?", "\ufffd"])("a %j where a hydrate dot belongs is named as such", (mark) => {
  expect(() => parseFormula(`CuSO4${mark}5H2O`)).toThrow(
    new Error(`formula: "${mark}" at character 6 of "CuSO4${mark}5H2O" is no hydrate dot. Type · in its place.`),
  );
});

test("the asterisk operator is a hydrate dot like its siblings, and an underscore behind a letter is still a subscript", () => {
  expect(molarMass(parseFormula("Na2SO4\u221710H2O"))).toBe(molarMass(parseFormula("Na2SO4·10H2O")));
  expect(molarMass(parseFormula("H_2SO_4"))).toBe(molarMass(parseFormula("H2SO4")));
});
