import type { CellFunction } from "./cellFunction";
import { acidFromTitrationFunction } from "./liquids/acidFromTitrationFunction";
import { productLedgerFunction } from "./liquids/productLedgerFunction";
import { vapourCompositionFunction } from "./liquids/vapourCompositionFunction";

/** Where a feed went, and what its vapours and liquids were. */
export const liquids: readonly CellFunction[] = [productLedgerFunction, vapourCompositionFunction, acidFromTitrationFunction];
