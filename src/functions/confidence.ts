import type { CellFunction } from "./cellFunction";
import { changeSignificantFunction } from "./confidence/changeSignificantFunction";
import { dixonFunction } from "./confidence/dixonFunction";
import { grubbsFunction } from "./confidence/grubbsFunction";
import { lossFractionUFunction } from "./confidence/lossFractionUFunction";
import { readingUFunction } from "./confidence/readingUFunction";
import { replicatesFunction } from "./confidence/replicatesFunction";
import { sampleMinimumFunction } from "./confidence/sampleMinimumFunction";

/** How well a weighing or a result is known, and whether replicates agree. */
export const confidence: readonly CellFunction[] = [
  readingUFunction,
  lossFractionUFunction,
  sampleMinimumFunction,
  changeSignificantFunction,
  replicatesFunction,
  grubbsFunction,
  dixonFunction,
];
