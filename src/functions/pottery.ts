import type { CellFunction } from "./cellFunction";
import { absorptionFunction } from "./pottery/absorptionFunction";
import { shrinkageFunction } from "./pottery/shrinkageFunction";
import { slipSolidsFunction } from "./pottery/slipSolidsFunction";

/** Clay before and after the kiln. */
export const pottery: readonly CellFunction[] = [shrinkageFunction, absorptionFunction, slipSolidsFunction];
