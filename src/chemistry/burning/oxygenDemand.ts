import { atomicWeight } from "../atomicWeights";
import type { Formula } from "../Formula";
import { molarMass } from "../molarMass";
import { burnableAtoms } from "./burnableAtoms";
import { endProducts } from "./endProducts";
import { freeHalogen, HALOGENS } from "./halogenProducts";

export type NitrogenTo = "N2" | "NH3" | "HNO3";
export type SulfurTo = "SO2" | "H2SO4";

/** What nitrogen and sulfur end as. Combustion takes N2 and SO2; the water trade's oxygen demand takes the others. */
export interface EndsAs {
  readonly nitrogenTo: NitrogenTo;
  readonly sulfurTo: SulfurTo;
}

export const COMBUSTION: EndsAs = { nitrogenTo: "N2", sulfurTo: "SO2" };

// Oxygen atoms that one atom takes up, counted as n(O) after hydrogen has become water: NH3 carries off the hydrogen
// of 3/2 H2O; HNO3 holds 3 O less the 1/2 of its hydrogen; H2SO4 holds 4 O less the 1 of its two hydrogens.
const OXYGEN_FOR_NITROGEN: Readonly<Record<NitrogenTo, number>> = { N2: 0, NH3: -3 / 2, HNO3: 5 / 2 };
const OXYGEN_FOR_SULFUR: Readonly<Record<SulfurTo, number>> = { SO2: 2, H2SO4: 3 };

/**
 * Oxygen that complete burning takes up, mol O2 per mol of formula units: half the sum over the elements of count times the oxygen atoms
 * that one atom takes on. Element by element, since products without oxygen (N2, HX) then need no case of their own. Negative when the
 * formula carries more oxygen than it needs. Hydrogen that leaves as HX takes up none. In combustion a halogen without hydrogen or alkali
 * metal leaves as X2; in the water trade's conventions water supplies the hydrogen.
 * Source: stoichiometry; ThOD forms as OECD Test Guideline 301, annex (from memory).
 * @param atoms count of each element in one formula unit
 * @throws InputProblem when halogen is left over beside a metal that may hold on to it
 */
export function oxygenPerMole(atoms: ReadonlyMap<string, number>, endsAs: EndsAs = COMBUSTION): number {
  let oxygenAtoms = 0;
  for (const [element, count] of atoms) oxygenAtoms += count * oxygenTakenBy(element, endsAs);
  return (oxygenAtoms + (inWater(endsAs) ? 0 : freeHalogen(atoms) / 2)) / 2;
}

/** Oxygen atoms that one atom of the element takes up on the way to its end product. */
export function oxygenTakenBy(element: string, { nitrogenTo, sulfurTo }: EndsAs): number {
  if (element === "O") return -1;
  if (element === "N") return OXYGEN_FOR_NITROGEN[nitrogenTo];
  if (element === "S") return OXYGEN_FOR_SULFUR[sulfurTo];
  if (HALOGENS.includes(element)) return -1 / 2;
  const found = endProducts.find((entry) => entry.element === element);
  if (found === undefined) throw new Error(`no end product for ${element}`);
  return found.oxygen / found.atoms;
}

const inWater = ({ nitrogenTo, sulfurTo }: EndsAs): boolean => nitrogenTo !== COMBUSTION.nitrogenTo || sulfurTo !== COMBUSTION.sulfurTo;

/** Molar mass of O2, g/mol. */
export const oxygenMolarMass = (): number => 2 * atomicWeight("O");

/**
 * Oxygen that complete burning takes up, g O2 per g: n(O2) M(O2) / M(formula); negative when the formula carries more oxygen than it needs,
 * and left so, since the size of the surplus marks an oxidiser. Isotopes burn as their element and weigh as themselves.
 * @throws InputProblem for a charged formula, an element without a settled end product, or unsettled halogen
 */
export function oxygenDemand(formula: Formula, endsAs: EndsAs = COMBUSTION): number {
  return (oxygenPerMole(burnableAtoms(formula), endsAs) * oxygenMolarMass()) / molarMass(formula);
}
