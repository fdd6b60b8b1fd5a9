import type { CellFunction } from "./cellFunction";
import { productLedgerFunction } from "./liquids/productLedgerFunction";

/** Where a feed went, and what its vapours and liquids were. */
export const liquids: readonly CellFunction[] = [productLedgerFunction];
