import { evidenceFiles } from "../functions/evidenceFiles";
import { balance } from "./balance";
import { burning } from "./burning";
import { compound } from "./compound";
import { confidence } from "./confidence";
import { drying } from "./drying";
import { furtherSalts } from "./furtherSalts";
import type { Published } from "./Published";
import { residue } from "./residue";
import { sense } from "./sense";

/** Every outside value held against a cell function. Those of a new function stand in its file of tests/functions/evidence. */
export const everyPublished: readonly Published[] = [
  ...compound,
  ...burning,
  ...drying,
  ...residue,
  ...balance,
  ...confidence,
  ...sense,
  ...furtherSalts,
  ...evidenceFiles.flatMap(({ published }) => published),
];
