import type { CellFunction } from "./cellFunction";
import { typicalRangeFunction } from "./sense/typicalRangeFunction";

/** Whether a result is one to be expected. */
export const sense: readonly CellFunction[] = [typicalRangeFunction];
