import { evidenceFiles } from "../evidenceFiles";
import { balance } from "./balance";
import { burning } from "./burning";
import { compound } from "./compound";
import { confidence } from "./confidence";
import { dryingConstancy } from "./dryingConstancy";
import { dryingEnd } from "./dryingEnd";
import { dryingFit } from "./dryingFit";
import { dryingMoisture } from "./dryingMoisture";
import { proximate } from "./proximate";
import type { Refusal } from "./Refusal";
import { residue } from "./residue";
import { sense } from "./sense";

/** Every refusal that is pinned. A new function's stand in its file of tests/functions/evidence. */
export const everyRefusal: readonly Refusal[] = [
  ...compound,
  ...burning,
  ...dryingMoisture,
  ...dryingConstancy,
  ...dryingEnd,
  ...dryingFit,
  ...residue,
  ...proximate,
  ...balance,
  ...confidence,
  ...sense,
  ...evidenceFiles.flatMap(({ refusals }) => refusals),
];
