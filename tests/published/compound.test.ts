import { atomicWeight } from "../../src/chemistry/atomicWeights";
import { standardAtomicWeights } from "../../src/chemistry/standardAtomicWeights";
import { numberOf, tableOf } from "../functions/call";
import { halfLastDigit } from "./halfLastDigit";

const element = (symbol: string): (typeof standardAtomicWeights)[number] => {
  const found = standardAtomicWeights.find((candidate) => candidate.symbol === symbol);
  if (found === undefined) throw new Error(`no ${symbol}`);
  return found;
};

/** The atoms that ATOMS counts, times other weights. */
const weighed = (formula: string, weightOf: (symbol: string) => number): number =>
  tableOf("ATOMS", formula)
    .slice(1)
    .reduce((sum, [symbol, count]) => sum + (count as number) * weightOf(symbol as string), 0);

// CIAAW 2021 (Prohaska et al., Pure Appl. Chem. 94 (2022) 573), abridged or conventional values.
test.each([
  ["N", "14.007"],
  ["O", "15.999"],
  ["Ca", "40.078"],
  ["Cu", "63.546"],
  ["Pb", "207.2"],
  ["Ar", "39.95"],
  ["Sn", "118.71"],
])("atomicWeight(%s) is the published %s g/mol", (symbol, printed) => {
  expect(Math.abs(atomicWeight(symbol) - Number(printed))).toBeLessThanOrEqual(halfLastDigit(printed));
  expect(Number(element(symbol).abridged)).toBe(Number(printed));
});

// Chemical & Engineering News 102 (34), "Weighty matters", on the 2024 revisions: lutetium was 174.9668 +/- 0.0001, zirconium 91.224 +/- 0.002,
// gadolinium 157.25 +/- 0.03 until then.
test.each([
  ["Lu", "174.9668", "0.0001"],
  ["Zr", "91.224", "0.002"],
  ["Gd", "157.25", "0.03"],
])("the 2021 table holds %s at %s +/- %s, as before the revisions of 2024", (symbol, standard, limit) => {
  expect(element(symbol)).toMatchObject({ standard, limit });
});

// Two printed values move in the last digit with the full weights of phosphorus (30.973 761 998 for 30.974) and aluminium (26.981 538 4 for
// 26.982): they are held with the abridged weights they were computed from, and the working value to that difference.
test.each([
  ["Ca10(PO4)6(OH)2", "1004.614", 6 * 0.000238002],
  ["Al2Si2O5(OH)4", "258.157", 2 * 0.0004616],
])("the atoms of %s times the abridged weights are %s g/mol, and molarMass differs by %s g/mol", (formula, printed, difference) => {
  const sum = weighed(formula, (symbol) => Number(element(symbol).abridged));
  expect(Math.abs(sum - Number(printed))).toBeLessThanOrEqual(halfLastDigit(printed));
  expect(Math.abs(sum - numberOf("MOLARMASS", formula) - difference)).toBeLessThan(halfLastDigit("0.0000"));
});

// Eurachem/CITAC QUAM, example A2: 204.2212 g/mol for potassium hydrogen phthalate with the weights of 1999 printed there.
test("the atoms of C8H5KO4 times the weights of Eurachem example A2 are its 204.2212 g/mol", () => {
  const weights: Readonly<Record<string, number>> = { C: 12.0107, H: 1.00794, O: 15.9994, K: 39.0983 };
  const sum = weighed("C8H5KO4", (symbol) => weights[symbol] ?? NaN);
  expect(Math.abs(sum - 204.2212)).toBeLessThanOrEqual(halfLastDigit("204.2212"));
});

// Method: Possolo et al., Pure Appl. Chem. 90 (2018) 395 (an interval taken as rectangular); 0.000264 g/mol recomputed with it outside this program.
test("the intervals of hydrogen and oxygen give water's molar mass a standard uncertainty of 0.000264 g/mol", () => {
  const uncertainty = (symbol: string): number => {
    const [low = NaN, high = NaN] = element(symbol).standard.slice(1, -1).split(",").map(Number);
    return (high - low) / (2 * Math.sqrt(3));
  };
  expect(Math.abs(Math.hypot(2 * uncertainty("H"), uncertainty("O")) - 0.000264449112937)).toBeLessThan(1e-12);
});
