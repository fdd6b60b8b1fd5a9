import { noNumber } from "../expressions/choices";
import { fn, is, retort, type Cell } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import type { SampleCells } from "../sheet/sampleCells";
import { checkWords } from "../words/checkWords";
import type { Check, Step } from "./Check";

// A figure more than results are shown with.
const DECIMALS = 4;
// What an answer of TYPICALRANGE begins with when the value is such as the literature reports.
const INSIDE = "inside";

/** Whether one sample's shares are such as the literature reports for plant matter, by the names that TYPICALRANGE gives them. */
export const typicalCheck = (_: RunSheet, { shares, charring, ashing }: SampleCells): Check => {
  const judged = [
    { quantity: "moisture", share: shares.moistureWet, mayBeNone: true },
    ...(charring === undefined ? [] : [{ quantity: "char yield", share: charring.shares.charYield, mayBeNone: false }]),
    ...(ashing === undefined ? [] : [{ quantity: "ash", share: ashing.shares.ash, mayBeNone: false }]),
  ];
  return {
    silentWhile: noNumber(...judged.map(({ share }) => share)),
    steps: judged.map(({ quantity, share, mayBeNone }): Step => ({
      skipWhile: noNumber(share),
      steps: typical(quantity, share, mayBeNone),
    })),
  };
};

/** TYPICALRANGE takes a 0 for nothing given where no share of that kind can be 0, so the sheet says itself what a 0 means. */
function typical(quantity: string, share: Cell, mayBeNone: boolean): Step[] {
  const value = fn("ROUND", share, DECIMALS);
  const answer = retort("TYPICALRANGE", quantity, value);
  return [
    ...(mayBeNone ? [] : [{ when: is(value, "=", 0), says: checkWords.range.nothingLeft(quantity) }]),
    { unless: is(fn("LEFT", answer, INSIDE.length), "=", INSIDE), says: answer },
  ];
}
