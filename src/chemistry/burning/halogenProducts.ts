import { halogenBesideMetal } from "../../problems/functions/burningProblems";
import type { BurnProduct } from "./endProducts";
import { ROUNDING_RESIDUE } from "./roundingResidue";

export const HALOGENS: readonly string[] = ["F", "Cl", "Br", "I"];
const ALKALI_METALS: readonly string[] = ["Li", "Na", "K"];
// Their halides and oxides pass into each other with temperature and moisture, so neither can be taken as the end.
const METALS_WITH_UNSETTLED_HALIDES: readonly string[] = ["Mg", "Ca", "Ba", "Zn", "Cu", "Al", "Fe"];

/**
 * Halogen atoms that find neither an alkali metal nor hydrogen to leave with, and so leave as X2.
 * @param atoms count of each element in one formula unit
 * @throws InputProblem when such halogen stands beside a metal that may hold on to it
 */
export function freeHalogen(atoms: ReadonlyMap<string, number>): number {
  const free = countOf(atoms, HALOGENS) - countOf(atoms, ALKALI_METALS) - countOf(atoms, ["H"]);
  if (free <= ROUNDING_RESIDUE) return 0;
  const metal = METALS_WITH_UNSETTLED_HALIDES.find((symbol) => atoms.has(symbol));
  if (metal !== undefined) throw halogenBesideMetal(metal);
  return free;
}

const countOf = (atoms: ReadonlyMap<string, number>, elements: readonly string[]): number =>
  elements.reduce((sum, element) => sum + (atoms.get(element) ?? 0), 0);

/**
 * What the halogens leave as: salts of the alkali metals first, then HX, and X2 where hydrogen runs out too.
 * Lithium comes before sodium and potassium, fluorine before chlorine, bromine and iodine: where several compete this
 * is a convention, and the oxygen taken up does not depend on it.
 * @param atoms count of each element in one formula unit
 * @returns the products, mol per mol, and the atoms that are left for the other products
 * @throws InputProblem when halogen is left over beside a metal that may hold on to it
 */
export function halogenProducts(atoms: ReadonlyMap<string, number>): { products: BurnProduct[]; left: ReadonlyMap<string, number> } {
  freeHalogen(atoms);
  const left = new Map(atoms);
  const products: BurnProduct[] = [];
  for (const partner of [...ALKALI_METALS, "H"]) {
    for (const halogen of HALOGENS) {
      const moles = Math.min(left.get(partner) ?? 0, left.get(halogen) ?? 0);
      if (moles <= ROUNDING_RESIDUE) continue;
      left.set(partner, (left.get(partner) ?? 0) - moles);
      left.set(halogen, (left.get(halogen) ?? 0) - moles);
      products.push({ text: partner + halogen, atoms: pair(partner, halogen), moles, leaves: partner === "H" ? "gas" : "solid" });
    }
  }
  return { products: [...products, ...diatomic(left)], left };
}

const pair = (partner: string, halogen: string): ReadonlyMap<string, number> =>
  new Map([
    [partner, 1],
    [halogen, 1],
  ]);

const diatomic = (left: ReadonlyMap<string, number>): BurnProduct[] =>
  HALOGENS.filter((halogen) => (left.get(halogen) ?? 0) > ROUNDING_RESIDUE).map((halogen) => ({
    text: `${halogen}2`,
    atoms: new Map([[halogen, 2]]),
    moles: (left.get(halogen) ?? 0) / 2,
    leaves: "gas",
  }));
