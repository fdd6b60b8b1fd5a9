import { elementRow } from "./elementRow";

/**
 * The limit that goes with the working value of an element [g/mol]: of an interval the abridged value's, else the standard's own, both as
 * printed beside the values in the table of `standardAtomicWeights`. 0 for a single isotope, whose mass is known to better than 1e-7 g/mol
 * (AME 2020).
 */
export function atomicWeightLimit(symbol: string): number {
  const row = elementRow(symbol);
  return row === undefined ? 0 : Number(row.limit || row.abridgedLimit);
}

/**
 * Standard uncertainty of an atomic weight [g/mol]: its limit over sqrt(3). The limits are bounds agreed on, not standard deviations, and any
 * value between them is as good: a rectangular distribution. Source: Possolo et al., Pure Appl. Chem. 90 (2018) 395.
 */
export const atomicWeightUncertainty = (symbol: string): number => atomicWeightLimit(symbol) / Math.sqrt(3);
