import { balanceCheck } from "./checks/balanceCheck";
import type { CheckFormula } from "./checks/Check";
import { closureCheck } from "./checks/closureCheck";
import { gainCheck } from "./checks/gainCheck";
import { materialCheck } from "./checks/materialCheck";
import { orderCheck } from "./checks/orderCheck";
import { steadyCheck } from "./checks/steadyCheck";
import { typicalCheck } from "./checks/typicalCheck";
import { vesselCheck } from "./checks/vesselCheck";
import { warmthCheck } from "./checks/warmthCheck";
import { zerosCheck } from "./checks/zerosCheck";
import type { Check } from "./quantities";

export const CHECK_FORMULAS: Readonly<Record<Check, CheckFormula>> = {
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
