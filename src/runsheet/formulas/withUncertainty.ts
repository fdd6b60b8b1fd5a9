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
  const scaled = reckon(reckon(uncertainty, "*", PERCENT * ROUNDS_UP), "/", FROM);
  const decimals = reckon(1, "-", fn("INT", fn("LOG10", scaled)));
  const percent = (fraction: Expression): Call => fn("FIXED", reckon(PERCENT, "*", fraction), decimals, true);
  return resultWords.withUncertainty(percent(share), percent(uncertainty));
}
