import { all, noNumber } from "../../expressions/choices";
import { fn, is, reckon } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import { areDifferent } from "../../formulas/agreement";
import { grams } from "../../formulas/sentences/rowSays";
import { isLighter, isMoreThanInside, isMoreThanScale } from "../../formulas/vesselAgain";
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
    steps: sheet.samples
      .flatMap((sample): Step[] => {
        const [gain, at, before] = [fn("N", end.gain(sample)), nameOf(end.vessel(sample)), nameOf(columns.box(rows.drying.vessel, sample))];
        return [
          step(isLighter(sheet, end, sample), words.lighter(sample, at, grams(sheet, reckon(0, "-", gain)), before)),
          step(isMoreThanInside(sheet, end, sample), words.farHeavier(sample, at, grams(sheet, gain), before)),
          step(isMoreThanScale(sheet, end, sample), words.heavier(sample, at, grams(sheet, gain), before)),
        ];
      })
      .concat(sheet.samples.length === 1 ? [] : sheet.samples.map((sample) => someOnly(sheet, end, sample))),
  };
}

/** A vessel left out while others were weighed again: one mean would hold samples with their scale taken off and one without. */
function someOnly(sheet: RunSheet, end: NonNullable<RunSheet["end"]>, sample: number): Step {
  const { vessel, drying } = sheet;
  const isUnderWay = is(fn("COUNT", vessel(sample), drying.boxes(sample)), ">", 0);
  const isMixed = all(is(areDifferent(sheet), "=", false), isUnderWay, noNumber(end.vessel(sample)));
  return step(isMixed, words.someOnly(sample, nameOf(end.vessel(sample))));
}
