import type { CellFunction } from "./cellFunction";
import { atomicWeightFunction } from "./compound/atomicWeightFunction";
import { atomsFunction } from "./compound/atomsFunction";
import { formulaCheckFunction } from "./compound/formulaCheckFunction";
import { massFractionFunction } from "./compound/massFractionFunction";
import { molarMassFunction } from "./compound/molarMassFunction";
import { molarMassUFunction } from "./compound/molarMassUFunction";

/** What a chemical formula says about a compound. */
export const compound: readonly CellFunction[] = [
  molarMassFunction,
  atomsFunction,
  formulaCheckFunction,
  massFractionFunction,
  atomicWeightFunction,
  molarMassUFunction,
];
