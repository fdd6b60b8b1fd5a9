import { onFirstUse } from "./onFirstUse";
import { standardAtomicWeights } from "./standardAtomicWeights";

/** The name of each element by its symbol, for messages. */
export const elementNames = onFirstUse((): ReadonlyMap<string, string> => new Map(standardAtomicWeights.map(({ symbol, name }) => [symbol, name])));
