import { halogenBesideMetal } from "../../problems/burningProblems";
import { ALKALI_METALS, HALOGENS } from "./elementGroups";
import { ROUNDING_RESIDUE } from "./roundingResidue";

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
