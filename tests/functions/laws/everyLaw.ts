import { evidenceFiles } from "../evidenceFiles";
import { balance } from "./balance";
import { burning } from "./burning";
import { compound } from "./compound";
import { confidence } from "./confidence";
import { drying } from "./drying";
import type { Law } from "./Law";
import { residue } from "./residue";
import { sense } from "./sense";

/** Every law, and every comparison with an independent library, that cell functions are held to through their cells. */
export const everyLaw: readonly Law[] = [
  ...compound,
  ...burning,
  ...drying,
  ...residue,
  ...balance,
  ...confidence,
  ...sense,
  ...evidenceFiles.flatMap(({ laws }) => laws),
];
