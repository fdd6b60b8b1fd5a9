import { burnableAtoms } from "../../../src/chemistry/burning/burnableAtoms";
import { endProducts } from "../../../src/chemistry/burning/endProducts";
import { HALOGENS } from "../../../src/chemistry/burning/halogenProducts";
import { elementOf } from "../../../src/chemistry/elementOf";
import { isMetal } from "../../../src/chemistry/isMetal";
import { isotopicMasses } from "../../../src/chemistry/isotopicMasses";
import { parseFormula } from "../../../src/chemistry/parseFormula";
import { standardAtomicWeights } from "../../../src/chemistry/standardAtomicWeights";
import { formulaOf } from "../formulaOf";

// Stoichiometry texts, from memory: the oxidation state that an element has once it has burned in air, and nitrogen as the element.
// Its oxide E(x)O(y) then has y = x * state / 2.
const BURNED: Readonly<Record<string, readonly [state: number, product: string, leaves: string]>> = {
  C: [4, "CO2", "gas"],
  H: [1, "H2O", "gas"],
  N: [0, "N2", "gas"],
  S: [4, "SO2", "gas"],
  P: [5, "P4O10", "smoke"],
  Li: [1, "Li2O", "solid"],
  Na: [1, "Na2O", "solid"],
  K: [1, "K2O", "solid"],
  Mg: [2, "MgO", "solid"],
  Ca: [2, "CaO", "solid"],
  Ba: [2, "BaO", "solid"],
  Zn: [2, "ZnO", "solid"],
  Cu: [2, "CuO", "solid"],
  Al: [3, "Al2O3", "solid"],
  Fe: [3, "Fe2O3", "solid"],
  Si: [4, "SiO2", "solid"],
};

test("the end products are those of the elements that burning covers, in the order they are listed", () => {
  expect(endProducts.map(({ element }) => element)).toEqual(Object.keys(BURNED));
});

test.each(endProducts.map((entry) => ({ ...entry })))("$element ends as $product, $leaves", ({ element, product, atoms, oxygen, leaves }) => {
  const [state, ...rest] = BURNED[element] ?? [];
  expect([product, leaves]).toEqual(rest);
  expect((2 * oxygen) / atoms).toBe(state);
  expect(Object.fromEntries(parseFormula(product).atoms)).toEqual(oxygen === 0 ? { [element]: atoms } : { [element]: atoms, O: oxygen });
});

// The periodic table by atomic number: groups 1, 17 and 18, and what stands right of the line from boron to astatine.
const NUMBERS = {
  halogens: [9, 17, 35, 53],
  nobleGases: [2, 10, 18, 36, 54, 86],
  nonmetals: [
    [1, 2],
    [5, 10],
    [14, 18],
    [33, 36],
    [52, 54],
    [85, 86],
  ] as const,
};
const symbolOf = (atomicNumber: number): string => standardAtomicWeights[atomicNumber - 1]?.symbol ?? "";

test("the halogens are those of group 17 that have a standard atomic weight", () => {
  expect(HALOGENS).toEqual(NUMBERS.halogens.map(symbolOf));
});

test.each(NUMBERS.nobleGases.map(symbolOf))("burnableAtoms refuses %s as a noble gas, in a compound too", (symbol) => {
  const message = `formula: ${symbol} is a noble gas and does not burn. Leave it out of the formula.`;
  expect(() => burnableAtoms(formulaOf({ C: 1, [symbol]: 2 }))).toThrow(new Error(message));
});

test.each(["(Kr)", "[36Ar]"])("a noble gas is refused however it is written, but only one that the tables hold: %s", (text) => {
  expect(() => burnableAtoms(parseFormula(`C${text}`))).toThrow(text === "(Kr)" ? "Kr is a noble gas" : 'no isotope "36Ar"');
});

test("burnableAtoms counts the isotopes of an element with it", () => {
  expect(Object.fromEntries(burnableAtoms(parseFormula("C2[13C]3H[1H]2D4T5[18O]7O")))).toEqual({ C: 5, H: 12, O: 8 });
});

test("every element but those right of the line from boron to astatine counts as a metal", () => {
  const nonmetal = (atomicNumber: number): boolean => NUMBERS.nonmetals.some(([first, last]) => atomicNumber >= first && atomicNumber <= last);
  // Named after 2003 and never weighed: no property of theirs decides anything here.
  standardAtomicWeights.slice(0, 109).forEach(({ symbol }, index) => {
    expect([symbol, isMetal(symbol)]).toEqual([symbol, !nonmetal(index + 1)]);
  });
  expect(["D", "T"].map(isMetal)).toEqual([false, false]);
});

test("an isotope is judged by its element", () => {
  expect(["D", "T", "1H", "13C", "10B", "18O", "129I"].filter(isMetal)).toEqual([]);
  const metals = ["6Li", "23Na", "57Fe", "235U"];
  expect(metals.filter(isMetal)).toEqual(metals);
  for (const symbol of isotopicMasses.keys()) expect([symbol, isMetal(symbol)]).toEqual([symbol, isMetal(elementOf(symbol))]);
});

test.each([
  ["13C", "C"],
  ["235U", "U"],
  ["D", "H"],
  ["T", "H"],
  ["Fe", "Fe"],
  ["Ti", "Ti"],
])("the element of %s is %s", (symbol, element) => {
  expect(elementOf(symbol)).toBe(element);
});
