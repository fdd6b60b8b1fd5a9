import { all, isNumber, noNumber } from "../../expressions/choices";
import { fn, is, reckon } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import { grams } from "../../formulas/rowSays";
import type { RunSheet } from "../../sheet/RunSheet";
import { checkWords } from "../../words/checkWords";
import { step, type Check, type Step } from "../Check";

const words = checkWords.vesselAgain;

// More than this share of the dry sample, 2 in 100, is more often char left inside than scale; own bound, no source.
const DRY_PER_SCALE = 50;

/** Whether the vessel, weighed again, gained no more than scale, and lost nothing. */
export function vesselAgainCheck(sheet: RunSheet): Check | undefined {
  const { end, across, working, drying } = sheet;
  if (end === undefined) return undefined;
  const explained = fn("N", working.explained);
  return {
    silentWhile: noNumber(across(end.gain)),
    steps: sheet.samples.flatMap((sample): Step[] => {
      const [gain, at] = [fn("N", end.gain(sample)), nameOf(end.vessel(sample))];
      const dry = drying.net(sample);
      const isMuch = is(reckon(gain, "*", DRY_PER_SCALE), ">", fn("MAX", fn("N", dry), reckon(explained, "*", DRY_PER_SCALE)));
      return [
        step(is(gain, "<", reckon(0, "-", explained)), words.lighter(sample, at, grams(sheet, reckon(0, "-", gain)))),
        step(all(isNumber(dry), isMuch), words.heavier(sample, at, grams(sheet, gain))),
      ];
    }),
  };
}
