import type { CellFunction } from "./cellFunction";
import { constantWeightFunction, constantWeightStepsFunction } from "./drying/constantWeightFunctions";
import { dryingEndFunction } from "./drying/dryingEndFunction";
import { dryingFitFunction } from "./drying/dryingFitFunction";
import { moistureConvertFunction, moistureDryFunction, moistureWetFunction } from "./drying/moistureFunctions";

/** Drying a sample: how much water it held, whether it is dry, and when it will be. */
export const drying: readonly CellFunction[] = [
  moistureWetFunction,
  moistureDryFunction,
  moistureConvertFunction,
  constantWeightFunction,
  constantWeightStepsFunction,
  dryingEndFunction,
  dryingFitFunction,
];
