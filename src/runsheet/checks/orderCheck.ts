import { all, any, noNumber, NOTHING, when } from "../expressions/choices";
import { fn, is } from "../expressions/Expression";
import { moistCell } from "../formulas/results";
import type { RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { step, type Check } from "./Check";

/** Whether the weights fall from moist to dry, char, ash and vessel, as far as they are made. */
export function orderCheck(sheet: RunSheet): Check {
  const { drying, vessel, working, samples, across, fired } = sheet;
  // Moist not above the vessel is told by the check of the vessel.
  const contradicts = (sample: number) =>
    all(is(working.contradiction(sample), ">", NOTHING), is(fn("N", moistCell(sheet, sample)), ">", fn("N", vessel(sample))));
  const later = across((fired[0] ?? drying).net);
  return {
    silentWhile: all(noNumber(later), noNumber(across(drying.net)), any(...samples.map((sample) => is(working.contradiction(sample), "=", NOTHING)))),
    steps: samples.map((sample) => {
      const others = samples.slice(sample).map((other) => when(contradicts(other), checkWords.order.alsoSample(other), NOTHING));
      return step(contradicts(sample), checkWords.order.of(sample, working.contradiction(sample), others));
    }),
  };
}
