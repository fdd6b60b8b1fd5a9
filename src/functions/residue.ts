import type { CellFunction } from "./cellFunction";
import { ashFractionFunction } from "./residue/ashFractionFunction";
import { basisConvertFunction } from "./residue/basisConvertFunction";
import { charYieldFunction } from "./residue/charYieldFunction";
import { fixedCarbonFunction } from "./residue/fixedCarbonFunction";
import { lossOnIgnitionFunction } from "./residue/lossOnIgnitionFunction";
import { proximateFunction } from "./residue/proximateFunction";
import { volatileFractionFunction } from "./residue/volatileFractionFunction";
import { volatileMatterFunction } from "./residue/volatileMatterFunction";

/** What is left after heating or burning, what went, and on which basis it is counted. */
export const residue: readonly CellFunction[] = [
  volatileFractionFunction,
  charYieldFunction,
  volatileMatterFunction,
  ashFractionFunction,
  fixedCarbonFunction,
  lossOnIgnitionFunction,
  proximateFunction,
  basisConvertFunction,
];
