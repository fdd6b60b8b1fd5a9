import { onFirstUse } from "./onFirstUse";
import { standardAtomicWeights, type StandardAtomicWeight } from "./standardAtomicWeights";

const rows = onFirstUse(() => new Map(standardAtomicWeights.map((row) => [row.symbol, row])));

/** The printed row of an element; undefined for an isotope. */
export const elementRow = (symbol: string): StandardAtomicWeight | undefined => rows().get(symbol);
