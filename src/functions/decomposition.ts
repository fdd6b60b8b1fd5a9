import type { CellFunction } from "./cellFunction";
import { theoreticalLossFunction } from "./decomposition/theoreticalLossFunction";

/** What a salt or a mineral loses on heating, and what the loss says about it. */
export const decomposition: readonly CellFunction[] = [theoreticalLossFunction];
