import { any } from "../expressions/choices";
import { isTruthHeld } from "../formulas/truths";
import type { CheckName } from "../sheet/layout";
import type { RunSheet } from "../sheet/RunSheet";
import { agreeCheck } from "./agreeCheck";
import { airCheck } from "./firing/airCheck";
import { analysisCheck } from "./firing/analysisCheck";
import { BOXES_FIRST } from "./boxesFirst";
import type { Check } from "./Check";
import { drynessCheck } from "./drynessCheck";
import { fineCheck } from "./fineCheck";
import { ashDoneCheck, charDoneCheck, heatDoneCheck } from "./firing/firedCheck";
import { caughtCheck, ledgerCheck } from "./firing/caughtChecks";
import { risingCheck, stageHeldCheck } from "./firing/stageChecks";
import { theoryCheck } from "./firing/theoryCheck";
import { gainCheck } from "./gainCheck";
import { materialCheck } from "./materialCheck";
import { openedCheck } from "./firing/openedCheck";
import { orderCheck } from "./orderCheck";
import { rangeCheck } from "./rangeCheck";
import { rowsCheck } from "./rowsCheck";
import { timesCheck } from "./timesCheck";
import { typedOverCheck } from "./typedOverCheck";
import { vesselAgainCheck } from "./firing/vesselAgainCheck";
import { vesselCheck } from "./vesselCheck";
import { warmthCheck } from "./warmthCheck";
import { zerosCheck } from "./zerosCheck";

type Looked = (sheet: RunSheet) => Check | undefined;

const LOOKED: Readonly<Record<CheckName, Looked>> = {
  vessel: vesselCheck,
  times: timesCheck,
  rows: rowsCheck,
  gain: gainCheck,
  order: orderCheck,
  dryness: drynessCheck,
  opened: openedCheck,
  charDone: charDoneCheck,
  ashDone: ashDoneCheck,
  heatDone: heatDoneCheck,
  theory: theoryCheck,
  rising: risingCheck,
  stageHeld: stageHeldCheck,
  air: airCheck,
  caught: caughtCheck,
  ledger: ledgerCheck,
  vesselAgain: vesselAgainCheck,
  agree: agreeCheck,
  fine: fineCheck,
  range: rangeCheck,
  material: materialCheck,
  analysis: analysisCheck,
  zeros: zerosCheck,
  warmth: warmthCheck,
  typedOver: typedOverCheck,
};

/** Each check of a sheet, with what it tells first of its boxes; undefined on a sheet that has nothing for it to look at. */
export const CHECKS = Object.fromEntries(
  (Object.entries(LOOKED) as [CheckName, Looked][]).map(([name, looked]): [CheckName, Looked] => [
    name,
    (sheet) => {
      const check = looked(sheet);
      // What is reckoned with a truth as a number accuses boxes that are right.
      const silentWhile = check && any(check.silentWhile, isTruthHeld(sheet));
      return check && silentWhile && { ...check, silentWhile, first: [...(BOXES_FIRST[name]?.(sheet) ?? []), ...(check.first ?? [])] };
    },
  ]),
) as Readonly<Record<CheckName, Looked>>;
