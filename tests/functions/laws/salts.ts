import fc from "fast-check";

// eslint-disable-next-line @typescript-eslint/no-require-imports -- the package has no types
const chemicalFormula = require("chemical-formula") as (formula: string) => Record<string, number>;

/** A salt, hydrated or not, with its oxide. */
export interface Salt {
  readonly salt: string;
  readonly water: number;
  readonly oxide: string;
}

const METALS = ["Mg 2", "Ca 2", "Sr 2", "Ba 2", "Zn 2", "Mn 2", "Cu 2", "Ni 2", "Li 1", "Na 1", "K 1", "Al 3", "Cr 3", "La 3"];
const ANIONS = ["CO3 2", "SO4 2", "SO3 2", "C2O4 2", "NO3 1", "OH 1", "HCO3 1", "Cl 1", "CH3COO 1", "C6H5O7 3"];

const split = (text: string): [symbol: string, charge: number] => [text.split(" ")[0] as string, Number(text.split(" ")[1])];
const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
const grouped = (group: string, count: number): string => (count === 1 ? group : `(${group})${count}`);

/** Salts of common metals, the metal and the anion in the least whole counts. */
export const anySalt: fc.Arbitrary<Salt> = fc
  .record({ metal: fc.constantFrom(...METALS), anion: fc.constantFrom(...ANIONS), water: fc.integer({ min: 0, max: 12 }) })
  .map(({ metal, anion, water }) => {
    const [symbol, positive] = split(metal);
    const [group, negative] = split(anion);
    const common = divisor(positive, negative);
    const salt = `${grouped(symbol, negative / common)}${grouped(group, positive / common)}`;
    return {
      salt: water === 0 ? salt : `${salt}·${water}H2O`,
      water,
      oxide: positive === 2 ? `${symbol}O` : positive === 1 ? `${symbol}2O` : `${symbol}2O3`,
    };
  });

/** The atoms of a formula with hydrate dots, as an independent library counts each part. */
export function atomsOf(formula: string): Record<string, number> {
  const sum: Record<string, number> = {};
  for (const part of formula.split("·")) {
    const { count = "1", unit = "" } = /^(?<count>\d+)?(?<unit>.+)$/.exec(part)?.groups ?? {};
    for (const [symbol, atoms] of Object.entries(chemicalFormula(unit))) sum[symbol] = (sum[symbol] ?? 0) + Number(count) * atoms;
  }
  return sum;
}

/** `2 NaHCO3 + O2` as its terms. */
export const termsOf = (side: string): { count: number; formula: string }[] =>
  side.split(" + ").map((term) => {
    const { count = "1", formula = "" } = /^(?:(?<count>[\d.]+) )?(?<formula>\S+)$/.exec(term)?.groups ?? {};
    return { count: Number(count), formula };
  });

/** The atoms of one side of a reaction. */
export function sideAtoms(side: string): Record<string, number> {
  const sum: Record<string, number> = {};
  for (const { count, formula } of termsOf(side))
    for (const [symbol, atoms] of Object.entries(atomsOf(formula))) sum[symbol] = (sum[symbol] ?? 0) + count * atoms;
  return sum;
}
