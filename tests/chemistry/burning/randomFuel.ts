import fc from "fast-check";
import type { Formula } from "../../../src/chemistry/Formula";
import { formulaOf } from "../formulaOf";

const HALOGENS = ["F", "Cl", "Br", "I"];
const ALKALI = ["Li", "Na", "K"];
const OTHER_METALS = ["Mg", "Ca", "Ba", "Zn", "Cu", "Al", "Fe"];
const ELEMENTS = ["C", "H", "O", "N", "S", "P", "Si", ...HALOGENS, ...ALKALI, ...OTHER_METALS];

/** Halogen left over beside a metal that may hold on to it has no settled product, so such formulas are not drawn. */
const isSettled = (atoms: Readonly<Record<string, number>>): boolean => {
  const count = (elements: readonly string[]): number => elements.reduce((sum, element) => sum + (atoms[element] ?? 0), 0);
  return count(HALOGENS) <= count(["H", ...ALKALI]) || count(OTHER_METALS) === 0;
};

const fuel = (count: fc.Arbitrary<number>): fc.Arbitrary<Formula> =>
  fc
    .uniqueArray(fc.constantFrom(...ELEMENTS), { minLength: 1, maxLength: 6 })
    .chain((elements) => fc.record(Object.fromEntries(elements.map((element) => [element, count]))))
    .filter((atoms) => isSettled(atoms))
    .map((atoms) => formulaOf(atoms));

/** Formulas over every element that burning covers, with whole counts. */
export const wholeFuel = fuel(fc.integer({ min: 1, max: 60 }));

/** The same with counts to two decimals. */
export const decimalFuel = fuel(fc.integer({ min: 1, max: 6000 }).map((hundredths) => hundredths / 100));
