import { noNumber } from "../../expressions/choices";
import { fn, reckon } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import { grams } from "../../formulas/sentences/rowSays";
import { isLighter, isMoreThanScale } from "../../formulas/vesselAgain";
import type { RunSheet } from "../../sheet/RunSheet";
import { checkWords } from "../../words/checkWords";
import { step, type Check, type Step } from "../Check";

const words = checkWords.vesselAgain;

/** Whether the vessel, weighed again, gained no more than scale, and lost nothing. */
export function vesselAgainCheck(sheet: RunSheet): Check | undefined {
  const { end, across, columns, rows } = sheet;
  if (end === undefined) return undefined;
  return {
    silentWhile: noNumber(across(end.gain)),
    steps: sheet.samples.flatMap((sample): Step[] => {
      const [gain, at, before] = [fn("N", end.gain(sample)), nameOf(end.vessel(sample)), nameOf(columns.box(rows.drying.vessel, sample))];
      return [
        step(isLighter(sheet, end, sample), words.lighter(sample, at, grams(sheet, reckon(0, "-", gain)), before)),
        step(isMoreThanScale(sheet, end, sample), words.heavier(sample, at, grams(sheet, gain), before)),
      ];
    }),
  };
}
