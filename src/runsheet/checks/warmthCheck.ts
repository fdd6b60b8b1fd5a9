import { noNumber } from "../expressions/choices";
import { fn, is } from "../expressions/Expression";
import { readsLighterBy } from "../formulas/coldEnough";
import type { RunSheet } from "../sheet/RunSheet";
import type { SampleCells } from "../sheet/sampleCells";
import { checkWords } from "../words/checkWords";
import { weighInWords } from "../words/weighInWords";
import type { Check } from "./Check";

const words = checkWords.warmth;

/**
 * Whether each weigh-in was cold enough for this balance; the warmest one with the error of the published case, as a hint.
 * Undefined on a sheet without temperatures.
 */
export function warmthCheck({ columns: { temperatures }, details }: RunSheet, { weighIns }: SampleCells): Check | undefined {
  if (temperatures === undefined) return undefined;
  const [flags, above] = [weighIns(temperatures.cold), weighIns(temperatures.warmer)];
  const { warm, chilled } = weighInWords.cold;
  const warmest = fn("MAX", above);
  return {
    silentWhile: fn("OR", noNumber(above), noNumber(details.readability)),
    steps: [
      {
        when: is(fn("COUNTIF", flags, warm), ">", 0),
        says: words.readsLight(fn("MATCH", warmest, above, 0), fn("ROUND", warmest, 0), readsLighterBy(warmest)),
      },
      { when: is(fn("COUNTIF", flags, chilled), ">", 0), says: words.readsHeavy },
    ],
  };
}
