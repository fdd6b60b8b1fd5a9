import fc from "fast-check";
import { burnEquation } from "../../../src/chemistry/burning/burnEquation";
import { burnReaction } from "../../../src/chemistry/burning/burnReaction";
import { formulaOf } from "../formulaOf";
import { decimalFuel, wholeFuel } from "./randomFuel";

const coefficient = (term: string): [count: number, text: string] => {
  const { number = "1", text = "" } = /^(?:(?<number>[\d.]+) )?(?<text>\S+)$/.exec(term)?.groups ?? {};
  return [Number(number), text];
};

const atomsOf = (text: string): [string, number][] =>
  [...text.matchAll(/([A-Z][a-z]?)([\d.]*)/g)].map(([, symbol = "", count = ""]) => [symbol, count === "" ? 1 : Number(count)]);

/** Atoms of each element on one side, read back from the printed text. */
function atomsOn(side: string): Map<string, number> {
  const total = new Map<string, number>();
  for (const [count, text] of side.split(" + ").map(coefficient))
    for (const [symbol, atoms] of atomsOf(text)) total.set(symbol, (total.get(symbol) ?? 0) + count * atoms);
  return total;
}

const coefficientsIn = (equation: string): number[] => equation.split(/ → | \+ /).map((term) => coefficient(term)[0]);
const isReaction = (text: ReturnType<typeof formulaOf>): boolean => {
  const { oxygen, products } = burnReaction(text);
  return products.length > 0 && (products.length > 1 || Math.abs(oxygen) > 1e-9);
};

test.each([
  ["wholes", wholeFuel],
  ["decimals", decimalFuel],
])("burnEquation prints the same atoms on both sides, counts in %s", (_, fuel) => {
  fc.assert(
    fc.property(fuel.filter(isReaction), (formula) => {
      const [left = "", right = ""] = burnEquation(formula).split(" → ");
      const [taken, given] = [atomsOn(left), atomsOn(right)];
      expect([...taken.keys()].sort()).toEqual([...given.keys()].sort());
      for (const [symbol, count] of taken) expect(given.get(symbol)).toBeCloseTo(count, 6);
    }),
    { numRuns: 2000 },
  );
});

test("burnEquation of whole counts has whole numbers without a common divisor", () => {
  const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
  fc.assert(
    fc.property(wholeFuel.filter(isReaction), (formula) => {
      const numbers = coefficientsIn(burnEquation(formula));
      expect(numbers.every(Number.isInteger)).toBe(true);
      expect(numbers.reduce(divisor)).toBe(1);
    }),
    { numRuns: 2000 },
  );
});

test.each([
  [{ C: 1, H: 4 }, "CH4 + 2 O2 → CO2 + 2 H2O"],
  [{ C: 8, H: 18 }, "2 C8H18 + 25 O2 → 16 CO2 + 18 H2O"],
  [{ C: 6, H: 10, O: 5 }, "C6H10O5 + 6 O2 → 6 CO2 + 5 H2O"],
  [{ C: 2, H: 5, N: 1, O: 2 }, "4 C2H5NO2 + 9 O2 → 8 CO2 + 10 H2O + 2 N2"],
  [{ C: 2, H: 3, Cl: 1 }, "2 C2H3Cl + 5 O2 → 4 CO2 + 2 H2O + 2 HCl"],
  [{ Ca: 1, C: 1, O: 3 }, "CaCO3 → CO2 + CaO"],
  [{ N: 2, H: 4, O: 3 }, "2 N2H4O3 → 4 H2O + 2 N2 + O2"],
  [{ K: 1, Cl: 1, O: 3 }, "2 KClO3 → 2 KCl + 3 O2"],
  [{ C: 1, H: 1.44, O: 0.66 }, "CH1.44O0.66 + 1.03 O2 → CO2 + 0.72 H2O"],
  [{ P: 4 }, "P4 + 5 O2 → P4O10"],
])("burnEquation of %j", (atoms, equation) => {
  expect(burnEquation(formulaOf(atoms as unknown as Readonly<Record<string, number>>))).toBe(equation);
});
