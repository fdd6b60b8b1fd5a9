import { lacksNumber, NOTHING } from "../expressions/choices";
import { fn, is, reckon } from "../expressions/Expression";
import { analysedPercent, isAnalysed, isTooLittle, LEAST_ANALYSED_PERCENT } from "../formulas/analysedPercent";
import type { RunSheet } from "../sheet/RunSheet";
import type { SampleCells } from "../sheet/sampleCells";
import { checkWords } from "../words/checkWords";
import type { Check } from "./Check";

const words = checkWords.closure;

// Ultimate analyses seldom add up closer than this, %: even careful ones of reference pine miss by 3 to 5 % (NIST, MaCFP).
const UNEXPLAINED_PERCENT = 3;

/**
 * Whether as much comes out of the comparison with open burning as goes in, to a display step, and the analysis explains the
 * sample, to 3 % of what is dry. Undefined for a run that ends with drying.
 */
export function closureCheck({ composition, details: { readability } }: RunSheet, sample: SampleCells): Check | undefined {
  const { vessel, dry, charring } = sample;
  if (composition === undefined || charring === undefined) return undefined;
  const { massIn, massOut, notCovered, dry: dryMass } = charring.comparison;
  const { carbon, hydrogen } = composition;
  const isGiven = is(fn("COUNT", carbon, hydrogen), "=", 2);
  const percent = fn("ROUND", reckon(reckon(100, "*", notCovered), "/", dryMass), 0);
  return {
    silentWhile: lacksNumber(vessel, dry, charring.char),
    steps: [
      {
        when: fn("AND", isAnalysed(composition), isGiven, isTooLittle(composition, sample)),
        says: words.waits(analysedPercent(composition, sample), String(LEAST_ANALYSED_PERCENT)),
      },
      { when: fn("ISERROR", massIn), says: words.seeComparison },
      { when: lacksNumber(massIn, massOut, notCovered, dryMass, readability), says: NOTHING },
      { when: is(fn("ABS", reckon(massIn, "-", massOut)), ">", readability), says: words.notClosed },
      {
        when: is(reckon(fn("ABS", notCovered), "*", 100), ">", reckon(UNEXPLAINED_PERCENT, "*", dryMass)),
        says: words.unexplained(percent),
      },
    ],
  };
}
