import type { CellFunction } from "./cellFunction";
import { constantWeightFunction } from "./drying/constantWeightFunction";
import { constantWeightStepsFunction } from "./drying/constantWeightStepsFunction";
import { dryingEndFunction } from "./drying/dryingEndFunction";
import { dryingFitFunction } from "./drying/dryingFitFunction";
import { moistureConvertFunction } from "./drying/moistureConvertFunction";
import { moistureDryFunction } from "./drying/moistureDryFunction";
import { moistureWetFunction } from "./drying/moistureWetFunction";

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
