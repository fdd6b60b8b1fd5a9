import { all, noNumber } from "../expressions/choices";
import { fn, is, joined, reckon, retort, type Cell, type Expression } from "../expressions/Expression";
import type { ShareName } from "../sheet/layout";
import type { RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { step, type Check, type Step } from "./Check";

const words = checkWords.range;

// A figure more than shares are shown with.
const DECIMALS = 4;
// What an answer of TYPICALRANGE begins with when the value is such as the literature reports.
const INSIDE = "inside";
// Before the brackets that hold a source; This cell gives it in full.
const SOURCE_FROM = " (";

/** Whether each sample's shares are such as the literature reports for plant matter, by the names that TYPICALRANGE gives them. */
export function rangeCheck({ charring, ashing, samples, share, across }: RunSheet): Check {
  const judged: readonly { readonly quantity: string; readonly name: ShareName; readonly mayBeNone: boolean }[] = [
    { quantity: "moisture", name: "moistureWet", mayBeNone: true },
    ...(charring === undefined ? [] : [{ quantity: "char yield", name: "charYield", mayBeNone: false } as const]),
    ...(ashing === undefined ? [] : [{ quantity: "ash", name: "ash", mayBeNone: false } as const]),
  ];
  return {
    silentWhile: noNumber(across((sample) => share("moistureWet", sample))),
    steps: samples.flatMap((sample) => judged.flatMap(({ quantity, name, mayBeNone }) => typical(sample, quantity, share(name, sample), mayBeNone))),
  };
}

/** TYPICALRANGE takes a 0 for nothing given where no share of that kind can be 0, so the sheet says itself what a 0 means. */
function typical(sample: number, quantity: string, share: Cell, mayBeNone: boolean): Step[] {
  // A negative share, by less than weighing explains, is none.
  const value = fn("MAX", 0, fn("ROUND", fn("N", share), DECIMALS));
  const answer = retort("TYPICALRANGE", quantity, value);
  const isKnown = is(fn("COUNT", share), "=", 1);
  return [
    ...(mayBeNone ? [] : [step(all(isKnown, is(value, "=", 0)), words.nothingLeft(sample, quantity))]),
    step(all(isKnown, is(is(fn("LEFT", answer, INSIDE.length), "=", INSIDE), "=", false)), words.outside(sample, upToSource(answer))),
  ];
}

const upToSource = (finding: Expression): Expression => fn("LEFT", finding, reckon(fn("FIND", SOURCE_FROM, joined(finding, SOURCE_FROM)), "-", 1));
