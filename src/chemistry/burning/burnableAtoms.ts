import { chargedFuel, noEndProduct, nobleGas } from "../../problems/functions/burningProblems";
import { elementOf } from "../elementOf";
import type { Formula } from "../Formula";
import { endProducts } from "./endProducts";
import { HALOGENS } from "./halogenProducts";

const NOBLE_GASES: readonly string[] = ["He", "Ne", "Ar", "Kr", "Xe", "Rn"];
export const BURNABLE_ELEMENTS: readonly string[] = [...endProducts.map(({ element }) => element), "O", ...HALOGENS];

/**
 * Atoms of each element in one formula unit, isotopes counted with their element.
 * @throws InputProblem for a charged formula and for an element without a settled end product
 */
export function burnableAtoms(formula: Formula): ReadonlyMap<string, number> {
  if (formula.charge !== 0) throw chargedFuel(formula.text);
  const atoms = new Map<string, number>();
  for (const [symbol, count] of formula.atoms) {
    const element = elementOf(symbol);
    if (NOBLE_GASES.includes(element)) throw nobleGas(element);
    if (!BURNABLE_ELEMENTS.includes(element)) throw noEndProduct(element, BURNABLE_ELEMENTS);
    atoms.set(element, (atoms.get(element) ?? 0) + count);
  }
  return atoms;
}
