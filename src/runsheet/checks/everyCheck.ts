import type { CheckName } from "../sheet/layout";
import type { RunSheet } from "../sheet/RunSheet";
import type { SampleCells } from "../sheet/sampleCells";
import { balanceCheck } from "./balanceCheck";
import type { Check } from "./Check";
import { closureCheck } from "./closureCheck";
import { gainCheck } from "./gainCheck";
import { materialCheck } from "./materialCheck";
import { orderCheck } from "./orderCheck";
import { steadyCheck } from "./steadyCheck";
import { typicalCheck } from "./typicalCheck";
import { vesselCheck } from "./vesselCheck";
import { warmthCheck } from "./warmthCheck";
import { zerosCheck } from "./zerosCheck";

/** Each check of one sample; undefined on a sheet that has nothing for it to look at. */
export const CHECKS: Readonly<Record<CheckName, (sheet: RunSheet, sample: SampleCells) => Check | undefined>> = {
  tare: vesselCheck,
  order: orderCheck,
  gain: gainCheck,
  steady: steadyCheck,
  balance: balanceCheck,
  range: typicalCheck,
  material: materialCheck,
  closure: closureCheck,
  zeros: zerosCheck,
  warmth: warmthCheck,
};
