import { airDensityFunction } from "./balance/airDensityFunction";
import { blankCorrectedFunction } from "./balance/blankCorrectedFunction";
import { buoyancyFunction } from "./balance/buoyancyFunction";
import { hotWeighingFunction } from "./balance/hotWeighingFunction";
import { zeroDriftFunction } from "./balance/zeroDriftFunction";
import type { CellFunction } from "./cellFunction";

/** What the balance, the air and the vessel put into a reading. */
export const balance: readonly CellFunction[] = [
  zeroDriftFunction,
  blankCorrectedFunction,
  airDensityFunction,
  buoyancyFunction,
  hotWeighingFunction,
];
