import { all, any, isNumber, NOTHING, type Condition } from "../../expressions/choices";
import { fn, is, reckon, type Cell } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import { analysedPercent, analysis, hasBoth, hasFormula, isAnalysed, LEAST_ANALYSED_PERCENT } from "../../formulas/burning";
import type { RunSheet } from "../../sheet/RunSheet";
import { checkWords } from "../../words/checkWords";
import { openFireWords } from "../../words/openFireWords";
import { step, type Check, type Step } from "../Check";

const words = checkWords.analysis;

// Ultimate analyses seldom add up closer than this, %: even careful ones of reference pine miss by 3 to 5 % (NIST, MaCFP).
const UNEXPLAINED_PERCENT = 3;
// Shares typed as fractions add up to about one; tenths.
const FRACTIONS_ADD_UP_TO = 11;
// What a sentence of FORMULA.CHECK about a mistake begins with.
const MISTAKE = "formula:";

/** The note says so where nobody is there to read the formula. */
const isNotReadHere = (note: Cell): Condition =>
  any(...[openFireWords.formulaNeeds, openFireWords.retortMissing].map((begins) => is(fn("LEFT", note, begins.length), "=", begins)));

/** Whether the analysis, with the ash, explains the dry sample, to 3 %; and what is wrong with a formula. */
export function analysisCheck(sheet: RunSheet): Check | undefined {
  const { composition, samples, drying, working } = sheet;
  if (composition === undefined) return undefined;
  const { note } = composition;
  const whole = fn("SUM", analysis(composition));
  return {
    silentWhile: all(is(isAnalysed(composition), "=", false), is(hasFormula(composition), "=", false)),
    steps: [
      step(hasBoth(composition), words.both(nameOf(composition.formula))),
      step(all(hasFormula(composition), is(fn("LEFT", note, MISTAKE.length), "=", MISTAKE)), words.formula(note)),
      step(all(is(whole, ">", 0), is(reckon(10, "*", whole), "<=", FRACTIONS_ADD_UP_TO)), words.fractions(nameOf(composition.carbon))),
      ...samples.flatMap((sample): Step[] => {
        const percent = analysedPercent(sheet, composition, sample);
        const missing = fn("ROUND", reckon(100, "-", percent), 0);
        const canBe = all(
          isAnalysed(composition),
          is(working.contradiction(sample), "=", NOTHING),
          any(isNumber(drying.net(sample)), is(whole, ">", 100 + UNEXPLAINED_PERCENT)),
        );
        return [
          step(all(canBe, is(percent, "<", LEAST_ANALYSED_PERCENT)), words.waits(percent, LEAST_ANALYSED_PERCENT)),
          step(all(canBe, is(percent, ">", 100 + UNEXPLAINED_PERCENT)), words.tooMuch(percent)),
          step(all(canBe, is(percent, "<", 100 - UNEXPLAINED_PERCENT)), words.unexplained(missing)),
        ];
      }),
      step(all(hasFormula(composition), isNotReadHere(note)), words.notHere(nameOf(composition.formula))),
    ],
  };
}
