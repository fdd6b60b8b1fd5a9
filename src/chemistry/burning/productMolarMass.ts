import { atomicWeight } from "../atomicWeights";

/** Molar mass of a product from its atoms, g/mol. */
export const productMolarMass = (atoms: ReadonlyMap<string, number>): number =>
  [...atoms].reduce((sum, [element, count]) => sum + count * atomicWeight(element), 0);
