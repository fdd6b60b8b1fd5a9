import { ashTwice, nothingTakenUp } from "../../problems/burningProblems";
import type { Formula } from "../Formula";
import type { BurnedGram } from "./BurnedGram";
import { burnProducts } from "./burnProducts";
import { burnReaction } from "./burnReaction";
import { ROUNDING_RESIDUE } from "./roundingResidue";

/**
 * One gram of dry sample burned, its combustible part given as a formula.
 * @param ashFraction ash weighed, g per g of dry sample; 0 when none was weighed, and then the formula's own solids are left
 * @throws InputProblem as burnReaction; when ash was weighed and the formula leaves solids too; when the formula
 *   carries more oxygen than it needs
 */
export function burnedFormula(formula: Formula, ashFraction: number): BurnedGram {
  const { oxygen, products } = burnReaction(formula);
  if (oxygen < -ROUNDING_RESIDUE) throw nothingTakenUp("formula");
  const solids = products.filter(({ leaves }) => leaves === "solid").map(({ text }) => text);
  if (ashFraction > 0 && solids[0] !== undefined) throw ashTwice(solids[0]);
  const balance = burnProducts(formula);
  const burnable = 1 - ashFraction;
  const gramsOf = (wanted: (product: string) => boolean): number =>
    burnable * balance.products.filter(({ product }) => wanted(product)).reduce((sum, { grams }) => sum + grams, 0);
  return {
    oxygenTaken: burnable * balance.oxygenTaken,
    carbonDioxide: gramsOf((product) => product === "CO2"),
    water: gramsOf((product) => product === "H2O"),
    otherGases: gramsOf((product) => product !== "CO2" && product !== "H2O" && !solids.includes(product)),
    solid: ashFraction + gramsOf((product) => solids.includes(product)),
    notCovered: 0,
  };
}
