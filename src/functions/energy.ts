import type { CellFunction } from "./cellFunction";
import { dryingHeatFunction } from "./energy/dryingHeatFunction";
import { heatingValueHigherFunction } from "./energy/heatingValueHigherFunction";
import { heatingValueNetFunction } from "./energy/heatingValueNetFunction";
import { heatingValueProximateFunction } from "./energy/heatingValueProximateFunction";

/** Heat: what a fuel gives, and what drying takes. */
export const energy: readonly CellFunction[] = [
  heatingValueHigherFunction,
  heatingValueProximateFunction,
  heatingValueNetFunction,
  dryingHeatFunction,
];
