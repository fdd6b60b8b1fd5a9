import { isotopeProducts } from "../../problems/functions/burningProblems";
import type { Formula } from "../Formula";
import { BURNABLE_ELEMENTS, burnableAtoms } from "./burnableAtoms";
import { endProducts, type BurnProduct, type Leaves } from "./endProducts";
import { halogenProducts } from "./halogenProducts";
import { oxygenPerMole } from "./oxygenDemand";
import { ROUNDING_RESIDUE } from "./roundingResidue";

/** Complete burning of one formula unit. */
export interface BurnReaction {
  /** mol O2 taken up per mol of fuel; negative when oxygen is given off. */
  readonly oxygen: number;
  /** Gases first, then smoke, then solids; oxygen given off is not among them. */
  readonly products: readonly BurnProduct[];
}

const ORDER: readonly Leaves[] = ["gas", "smoke", "solid"];

/**
 * Complete burning of one formula unit, mol per mol, to CO2, H2O, N2, SO2, HX, P4O10 and the oxides or salts of the metals. Halogens are
 * settled first, for they take hydrogen and alkali metal away from the oxides. Source: as endProducts.
 * @throws InputProblem as oxygenDemand, and for isotopes, whose products would have to be told apart
 */
export function burnReaction(formula: Formula): BurnReaction {
  const atoms = burnableAtoms(formula);
  const isotope = [...formula.atoms.keys()].find((symbol) => !BURNABLE_ELEMENTS.includes(symbol));
  if (isotope !== undefined) throw isotopeProducts(isotope);
  const { products, left } = halogenProducts(atoms);
  const all = [...oxidesOf(left), ...products];
  return { oxygen: oxygenPerMole(atoms), products: ORDER.flatMap((leaves) => all.filter((product) => product.leaves === leaves)) };
}

const oxidesOf = (left: ReadonlyMap<string, number>): BurnProduct[] =>
  endProducts
    .filter(({ element }) => (left.get(element) ?? 0) > ROUNDING_RESIDUE)
    .map(({ element, product, atoms, oxygen, leaves }) => ({
      text: product,
      atoms: new Map(
        oxygen === 0
          ? [[element, atoms]]
          : [
              [element, atoms],
              ["O", oxygen],
            ],
      ),
      moles: (left.get(element) ?? 0) / atoms,
      leaves,
    }));
