import { noNumber, when, type Condition } from "../expressions/choices";
import { bracketed, fn, is, reckon, type Call } from "../expressions/Expression";
import type { Composition } from "../sheet/RunSheet";
import type { SampleCells } from "../sheet/sampleCells";

/** The least that fractions and ash may add up to, %: BURN.COMPARE answers from there on. */
export const LEAST_ANALYSED_PERCENT = 90;

/**
 * How much of a sample its analysis and ash account for so far: 100 (C + H + O + N + S + (ash - vessel) / (dry - vessel)),
 * %, to a tenth. Only once the sample is dry; ash not yet weighed counts as none.
 */
export function analysedPercent({ carbon, hydrogen, oxygen, nitrogen, sulfur }: Composition, { vessel, dry, ashing }: SampleCells): Call {
  const fractions = fn("SUM", carbon, hydrogen, oxygen, nitrogen, sulfur);
  // Without ash the brackets do nothing; they keep sheets as they always were.
  const whole = ashing === undefined ? bracketed(fractions) : reckon(fractions, "+", ashOfDry(ashing.ash));
  return fn("ROUND", reckon(100, "*", whole), 1);

  function ashOfDry(ash: typeof dry): Call {
    return when(noNumber(ash), 0, reckon(reckon(ash, "-", vessel), "/", reckon(dry, "-", vessel)));
  }
}

/** Whether no formula is given. */
export const isAnalysed = ({ formula }: Composition): Condition => is(fn("COUNTA", formula), "=", 0);

/** Whether the analysis, and the ash so far, account for too little of the sample to be burned. */
export const isTooLittle = (composition: Composition, sample: SampleCells): Condition =>
  is(analysedPercent(composition, sample), "<", LEAST_ANALYSED_PERCENT);
