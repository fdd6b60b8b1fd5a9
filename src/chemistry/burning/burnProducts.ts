import { noAirNeeded } from "../../problems/functions/burningProblems";
import type { Formula } from "../Formula";
import { molarMass } from "../molarMass";
import { AIR_MOLAR_MASS, airDemand, OXYGEN_IN_AIR } from "./airDemand";
import { burnReaction } from "./burnReaction";
import { oxygenMolarMass } from "./oxygenDemand";
import { ROUNDING_RESIDUE } from "./roundingResidue";

export interface ProductAmount {
  readonly product: string;
  /** mol per mol of fuel. */
  readonly moles: number;
  /** g per g of fuel. */
  readonly grams: number;
}

/** What burning one gram takes in and gives, in g per g of fuel. */
export interface BurnBalance {
  readonly products: readonly ProductAmount[];
  readonly oxygenTaken: number;
  /** Air let in; undefined when burning in oxygen alone is reckoned. */
  readonly air: number | undefined;
  readonly massIn: number;
  readonly massOut: number;
}

/**
 * Products of complete burning, by amount and by mass, with what goes in and what comes out, per gram of fuel:
 * m(product) = n(product) M(product) / M(fuel); in = 1 + O2 taken up, or 1 + air; out = sum of the products.
 * In and out are added up apart, so that they agree only if every element is conserved. Source: conservation of each element.
 * @param excessAir air beyond the air needed, as a share of the air needed (0.15 is 15 % more); left out, burning is
 *   reckoned in oxygen alone and nothing of the air is listed
 * @throws InputProblem as burnReaction; also when excess air is given and no air is needed
 */
export function burnProducts(formula: Formula, excessAir?: number): BurnBalance {
  const { oxygen, products } = burnReaction(formula);
  const fuel = molarMass(formula);
  const amounts = products.map(({ text, atoms, moles }) => ({ product: text, moles, grams: (moles * molarMass({ atoms })) / fuel }));
  const oxygenMass = (oxygen * oxygenMolarMass()) / fuel;
  if (oxygen < -ROUNDING_RESIDUE) amounts.push({ product: "O2 given off", moles: -oxygen, grams: -oxygenMass });
  const oxygenTaken = Math.max(0, oxygenMass);
  if (excessAir === undefined) return closed(amounts, oxygenTaken, undefined);
  if (oxygen <= ROUNDING_RESIDUE) throw noAirNeeded(formula.text);
  const air = airDemand(oxygenTaken) * (1 + excessAir);
  amounts.push({ product: "O2 left over", moles: oxygen * excessAir, grams: oxygenTaken * excessAir });
  const restOfAir = air * (1 - OXYGEN_IN_AIR);
  amounts.push({ product: "N2 of the air, with argon", moles: (restOfAir * fuel) / restOfAirMolarMass(), grams: restOfAir });
  return closed(amounts, oxygenTaken, air);
}

const closed = (products: readonly ProductAmount[], oxygenTaken: number, air: number | undefined): BurnBalance => ({
  products,
  oxygenTaken,
  air,
  massIn: 1 + (air ?? oxygenTaken),
  massOut: products.reduce((sum, { grams }) => sum + grams, 0),
});

/**
 * Molar mass of dry air without its oxygen, g/mol: (1 - w) / (1/M(air) - w/M(O2)), nitrogen with about 1 % argon, 28.16. From the same two
 * constants as the mass fraction, so that the moles of air add up too.
 */
export const restOfAirMolarMass = (): number => (1 - OXYGEN_IN_AIR) / (1 / AIR_MOLAR_MASS - OXYGEN_IN_AIR / oxygenMolarMass());
