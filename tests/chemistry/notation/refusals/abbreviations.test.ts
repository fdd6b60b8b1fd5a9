import { molarMass } from "../../../../src/chemistry/molarMass";
import { abbreviations } from "../../../../src/chemistry/notation/refusals/words/abbreviations";
import { parseFormula } from "../../../../src/chemistry/parseFormula";

test.each([...abbreviations()])("the formula to type for %s, %s, reads, and the abbreviation does not", (abbreviation, formula) => {
  expect(molarMass(parseFormula(formula))).toBeGreaterThan(0);
  expect(() => parseFormula(abbreviation)).toThrow(new Error(`formula: "${abbreviation}" is an abbreviation. Type the formula: ${formula}.`));
});

// Molar masses as catalogues print them, g/mol, from memory.
test.each([
  ["KHP", 204.22],
  ["EDTA", 292.24],
  ["TRIS", 121.14],
  ["HEPES", 238.3],
  ["SDS", 288.38],
  ["THF", 72.11],
  ["DMSO", 78.13],
  ["DMF", 73.09],
  ["TNT", 227.13],
  ["RDX", 222.12],
  ["PETN", 316.14],
  ["MTBE", 88.15],
  ["TEOS", 208.33],
  ["BHT", 220.35],
  ["DDT", 354.49],
  ["BPA", 228.29],
  ["ATP", 507.18],
  ["DTT", 154.25],
  ["TEMPO", 156.25],
  ["MSG", 169.11],
  ["ONPG", 301.25],
  ["MES", 195.24],
  ["IPTG", 238.3],
  ["PMSF", 174.19],
  ["ABTS", 514.62],
  ["DTPA", 393.35],
  ["DAPI", 277.32],
  ["TBHQ", 166.22],
  ["PFOS", 500.13],
  ["HOBT", 135.12],
])("%s has the molar mass that catalogues print, %d g/mol", (abbreviation, printed) => {
  expect(Math.abs(molarMass(parseFormula(abbreviations().get(abbreviation) ?? "")) - printed)).toBeLessThan(0.03);
});

// A saline, a fertiliser of two salts, a method, a family of compounds, a gel, one phosphate fertiliser with its gypsum, and a nickelate.
test.each(["PBS", "CAN", "AAS", "PAH", "CSH", "SSP", "LNO"])("%s, which has no one formula, is refused without one to type", (text) => {
  expect(() => parseFormula(text)).toThrow();
  expect(() => parseFormula(text)).not.toThrow(/Type the formula: /);
});
