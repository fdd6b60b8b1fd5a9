import type { CellFunction } from "./cellFunction";
import { calcinationDegreeFunction } from "./decomposition/calcinationDegreeFunction";
import { decompositionStepsFunction } from "./decomposition/decompositionStepsFunction";
import { hydrateWaterFunction } from "./decomposition/hydrateWaterFunction";
import { mixtureFromLossFunction } from "./decomposition/mixtureFromLossFunction";
import { purityFromLossFunction } from "./decomposition/purityFromLossFunction";
import { theoreticalLossFunction } from "./decomposition/theoreticalLossFunction";

/** What a salt or a mineral loses on heating, and what the loss says about it. */
export const decomposition: readonly CellFunction[] = [
  theoreticalLossFunction,
  hydrateWaterFunction,
  purityFromLossFunction,
  calcinationDegreeFunction,
  mixtureFromLossFunction,
  decompositionStepsFunction,
];
