import { all, any, noNumber } from "../expressions/choices";
import { fn, is, reckon, type Cell } from "../expressions/Expression";
import type { ShareName } from "../sheet/layout";
import type { RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { step, type Check, type Step } from "./Check";

const words = checkWords.range;

interface Band {
  readonly called: keyof typeof words.called;
  readonly name: ShareName;
  /** Percent; 0 as the least means that a share may be none. */
  readonly atLeast: number;
  readonly atMost: number;
}

/** The bands of TYPICALRANGE for untreated plant matter, percent: moisture on the wet basis, the rest of the dry sample. */
export const BANDS: readonly Band[] = [
  { called: "moisture", name: "moistureWet", atLeast: 0, atMost: 70 },
  { called: "char", name: "charYield", atLeast: 10, atMost: 45 },
  { called: "ash", name: "ash", atLeast: 0.1, atMost: 25 },
];

/** Whether each sample's shares are such as the literature reports for plant matter. */
export function rangeCheck({ rows, samples, share, across }: RunSheet): Check {
  const judged = BANDS.filter(({ name }) => rows.results.shares[name] !== undefined);
  return {
    silentWhile: noNumber(across((sample) => share("moistureWet", sample))),
    steps: samples.flatMap((sample) => judged.map((band) => outside(sample, band, share(band.name, sample)))),
  };
}

// In cell formulas a whole number, as the least ash is a tenth of a percent.
const TENTHS = 10;

function outside(sample: number, { called, atLeast, atMost }: Band, share: Cell): Step {
  const percent = fn("ROUND", reckon(100, "*", fn("N", share)), 2);
  const isOut = any(is(percent, ">", atMost), ...(atLeast === 0 ? [] : [is(reckon(TENTHS, "*", percent), "<", TENTHS * atLeast)]));
  const said = words.outside(sample, words.called[called], fn("FIXED", percent, 1, true), String(atLeast), String(atMost));
  return step(all(is(fn("COUNT", share), "=", 1), isOut), said);
}
