import { airDemandFunction } from "./burning/airDemandFunction";
import { burnCompareFunction } from "./burning/burnCompareFunction";
import { burnEquationFunction } from "./burning/burnEquationFunction";
import { burnProductsFunction } from "./burning/burnProductsFunction";
import { oxygenDemandFunction } from "./burning/oxygenDemandFunction";
import { oxygenDemandUltimateFunction } from "./burning/oxygenDemandUltimateFunction";
import type { CellFunction } from "./cellFunction";

/** What open burning takes up and gives off. */
export const burning: readonly CellFunction[] = [
  oxygenDemandFunction,
  oxygenDemandUltimateFunction,
  airDemandFunction,
  burnEquationFunction,
  burnProductsFunction,
  burnCompareFunction,
];
