import type { CellFunction } from "./cellFunction";
import { atomsFunction } from "./compound/atomsFunction";
import { formulaCheckFunction } from "./compound/formulaCheckFunction";
import { molarMassFunction } from "./compound/molarMassFunction";

/** What a chemical formula says about a compound. */
export const compound: readonly CellFunction[] = [molarMassFunction, atomsFunction, formulaCheckFunction];
