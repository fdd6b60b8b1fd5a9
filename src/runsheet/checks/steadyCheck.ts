import { fn, is } from "../expressions/Expression";
import { newestVerdict } from "../formulas/constantWeight";
import type { RunSheet } from "../sheet/RunSheet";
import type { SampleCells } from "../sheet/sampleCells";
import { checkWords } from "../words/checkWords";
import { weighInWords } from "../words/weighInWords";
import { IN_ORDER, type Check } from "./Check";

const words = checkWords.steady;

/** Whether the sample was shown steady, and before it was charred. */
export const steadyCheck = (sheet: RunSheet, sample: SampleCells): Check => {
  const newest = newestVerdict(sheet, sample);
  const { charring } = sample;
  return {
    silentWhile: is(fn("COUNT", sample.weighIns(sheet.columns.at.sample)), "<", 2),
    steps: [
      { when: is(fn("COUNT", sample.dry), "=", 1), says: IN_ORDER },
      ...(charring === undefined ? [] : [{ when: is(fn("COUNT", charring.char), "=", 1), says: words.charredBefore }]),
      { when: fn("ISERROR", newest), says: words.seeTable },
      { when: is(newest, "=", weighInWords.verdicts.notYet), says: words.notYet },
    ],
    otherwise: words.notShown(newest),
  };
};
