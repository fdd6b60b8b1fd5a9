import { fn, reckon, type Call, type Expression, type Joined } from "../expressions/Expression";
import { resultWords } from "../words/resultWords";

// A mantissa of 9.95 and more rounds up to the next power of ten, so it counts as one already: 9.95 * 200 / 199 = 10.
const [ROUNDS_UP, FROM] = [200, 199] as const;
const PERCENT = 100;

/**
 * The text "34.801 % ± 0.010 %" of a share and its uncertainty, both fractions: uncertainty to two figures, value to the
 * same place (GUM, JCGM 100:2008, 7.2.6). Decimals of a percent: 1 - floor(log10(100 u)). FIXED writes numbers the way the
 * reader's own spreadsheet does.
 */
export function withUncertainty(share: Expression, uncertainty: Expression): Joined {
  const decimals = decimalsFor(uncertainty, PERCENT);
  const percent = (fraction: Expression): Call => fn("FIXED", reckon(PERCENT, "*", fraction), decimals, true);
  return resultWords.withUncertainty(percent(share), percent(uncertainty));
}

/** The text "5.012 ± 0.041" of a number and its uncertainty, rounded alike. */
export function countWithUncertainty(count: Expression, uncertainty: Expression): Joined {
  const decimals = decimalsFor(uncertainty, 1);
  return resultWords.countWithUncertainty(fn("FIXED", count, decimals, true), fn("FIXED", uncertainty, decimals, true));
}

/** Decimals that show two figures of an uncertainty taken so many times. */
const decimalsFor = (uncertainty: Expression, times: number): Expression =>
  reckon(1, "-", fn("INT", fn("LOG10", reckon(reckon(uncertainty, "*", times * ROUNDS_UP), "/", FROM))));
