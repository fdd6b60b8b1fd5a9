import { ALWAYS_NARROW, fewestSteps, WIDEST_SHARE } from "../../drying/constantWeight/constancyCriteria";
import { all, any, anyWhere, when, type Condition } from "../expressions/choices";
import { fn, is, reckon, type Expression } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import type { RunSheet } from "../sheet/RunSheet";
import type { Weighed } from "../sheet/Weighed";
import { checkWords } from "../words/checkWords";
import { step, type Step } from "./Check";

const { refused } = checkWords.dryness;

// In cell formulas whole numbers.
const PER_SHARE = Math.round(1 / WIDEST_SHARE);
const PER_GRAM = Math.round(1 / ALWAYS_NARROW);
// Above whatever a limit is held against, g.
const HEAVIEST = 10_000_000;

/**
 * What CONSTANTWEIGHT refuses a limit for (constancyCriteria.ts), told where verdicts are errors by it: fewer display steps than two, more than
 * 4 % of a sample at the first weighing of the table, or a share above 4 %.
 * @param first what a sample weighed then, g without its vessel
 */
export function limitRefused({ settings, samples, across }: RunSheet, table: Weighed, first: (sample: number) => Expression): Step[] {
  const { limit, criterion, readability } = settings;
  const isIn = (name: string): Condition => is(criterion, "=", name);
  const isAnyError = anyWhere(fn("ISERROR", across(table.steady)));
  const typed = fn("N", limit);
  const grams = reckon(typed, "*", when(isIn("readability"), fn("N", readability), 1));
  const lightest = fn("MIN", ...samples.map((sample) => when(fn("ISERROR", table.steady(sample)), first(sample), HEAVIEST)));
  const inMass = any(isIn("readability"), isIn("absolute"));
  const at = nameOf(limit);
  return [
    step(all(isAnyError, isIn("readability"), is(typed, "<", fewestSteps)), refused.steps(at)),
    step(all(inMass, is(reckon(grams, "*", PER_GRAM), ">", 1), is(lightest, "<", reckon(grams, "*", PER_SHARE))), refused.mass(at)),
    step(all(isAnyError, is(inMass, "=", false), is(reckon(typed, "*", PER_SHARE), ">", 1)), refused.share(at)),
  ];
}
