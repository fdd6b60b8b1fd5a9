import { onFirstUse } from "./onFirstUse";
import { standardAtomicWeights } from "./standardAtomicWeights";

const limits = onFirstUse(
  () => new Map(standardAtomicWeights.map(({ symbol, limit, abridgedLimit }): [string, number] => [symbol, Number(limit || abridgedLimit)])),
);

/**
 * The limit that goes with the working value of an element [g/mol]: of an interval the abridged value's, else the standard's own, both as
 * printed beside the values in the table of `standardAtomicWeights`. 0 for a single isotope, whose mass is known to better than 1e-7 g/mol
 * (AME 2020).
 */
export const atomicWeightLimit = (symbol: string): number => limits().get(symbol) ?? 0;

/**
 * Standard uncertainty of an atomic weight [g/mol]: its limit over sqrt(3). The limits are bounds agreed on, not standard deviations, and any
 * value between them is as good: a rectangular distribution. Source: Possolo et al., Pure Appl. Chem. 90 (2018) 395.
 */
export const atomicWeightUncertainty = (symbol: string): number => atomicWeightLimit(symbol) / Math.sqrt(3);
