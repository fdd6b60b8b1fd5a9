import fc from "fast-check";
import { burnReaction, type BurnReaction } from "../../../src/chemistry/burning/burnReaction";
import type { Formula } from "../../../src/chemistry/Formula";
import { formulaOf } from "../formulaOf";
import { decimalFuel, wholeFuel } from "./randomFuel";

/** Atoms of every element on the product side, oxygen given off counted negative on the other. */
function atomsOut({ oxygen, products }: BurnReaction): Map<string, number> {
  const total = new Map<string, number>([["O", -2 * oxygen]]);
  for (const { atoms, moles } of products) for (const [element, count] of atoms) total.set(element, (total.get(element) ?? 0) + moles * count);
  return total;
}

function expectBalance(formula: Formula): void {
  const out = atomsOut(burnReaction(formula));
  for (const element of new Set([...formula.atoms.keys(), ...out.keys()])) {
    expect({ element, strays: Math.abs((out.get(element) ?? 0) - (formula.atoms.get(element) ?? 0)) < 1e-9 }).toEqual({ element, strays: true });
  }
}

const productsOf = (atoms: Readonly<Record<string, number>>): string[] => burnReaction(formulaOf(atoms)).products.map(({ text }) => text);

test("burnReaction balances every element of any formula with whole counts", () => {
  fc.assert(fc.property(wholeFuel, expectBalance), { numRuns: 2000 });
});

test("burnReaction balances every element of any formula with decimal counts", () => {
  fc.assert(fc.property(decimalFuel, expectBalance), { numRuns: 2000 });
});

test("burnReaction gives every product in a positive amount", () => {
  fc.assert(
    fc.property(wholeFuel, (formula) => {
      expect(burnReaction(formula).products.every(({ moles }) => moles > 0)).toBe(true);
    }),
    { numRuns: 1000 },
  );
});

test.each([
  ["hydrogen takes halogen before it becomes water", { C: 2, H: 3, Cl: 1 }, ["CO2", "H2O", "HCl"]],
  ["halogen beyond the hydrogen leaves as the element", { C: 1, H: 1, Cl: 3 }, ["CO2", "HCl", "Cl2"]],
  ["an alkali metal keeps halogen as salt before hydrogen takes it", { C: 2, H: 2, Cl: 1, Na: 1, O: 2 }, ["CO2", "H2O", "NaCl"]],
  ["fluorine is bound before chlorine, bromine and iodine", { C: 1, H: 1, F: 1, I: 1 }, ["CO2", "HF", "I2"]],
  ["phosphorus leaves as smoke, after the gases and before the solids", { C: 3, H: 9, P: 1, K: 1, O: 4 }, ["CO2", "H2O", "P4O10", "K2O"]],
  [
    "every other metal leaves its oxide",
    { Mg: 1, Ca: 1, Ba: 1, Zn: 1, Cu: 1, Al: 2, Fe: 2, Si: 1 },
    ["MgO", "CaO", "BaO", "ZnO", "CuO", "Al2O3", "Fe2O3", "SiO2"],
  ],
  ["lithium and sodium leave their oxides", { Li: 2, Na: 2, C: 2, O: 6 }, ["CO2", "Li2O", "Na2O"]],
  ["nitrogen and sulfur leave as N2 and SO2", { C: 2, H: 7, N: 1, S: 1, O: 3 }, ["CO2", "H2O", "N2", "SO2"]],
])("burnReaction: %s", (_, atoms, products) => {
  expect(productsOf(atoms as Readonly<Record<string, number>>)).toEqual(products);
});

test("burnReaction leaves no trace product where decimal counts cancel only to rounding", () => {
  // 0.1 + 0.2 - 0.3 is not 0 in binary.
  expect(productsOf({ H: 0.3, Cl: 0.1, Br: 0.2, C: 1 })).toEqual(["CO2", "HCl", "HBr"]);
  expect(productsOf({ H: 0.3, Cl: 0.1, Br: 0.2, Ca: 1 })).toEqual(["HCl", "HBr", "CaO"]);
});
