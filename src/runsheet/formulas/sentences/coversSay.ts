import { all, any, firstOf, isNumber, NOTHING, when } from "../../expressions/choices";
import { fn, is, joined, reckon, type Expression } from "../../expressions/Expression";
import type { RunSheet } from "../../sheet/RunSheet";
import { checkWords } from "../../words/checkWords";
import { headWords } from "../../words/headWords";
import { saltWords } from "../../words/saltWords";
import { areKeptApart, areRepeats, haveNoCommonValue, spreadOf, weighingOf, WORTH_SAYING } from "../agreement";
import { headline } from "../headline";
import { isNotDry } from "../weighings";
import { isYetToDry } from "../yetToDry";
import { isAbsent } from "./absence";
import { counted, type ChecksAt } from "./checksSay";

const { verdicts } = checkWords;

/** What the ± covers and what it does not. */
export function coversSay(sheet: RunSheet, checks: ChecksAt): Expression {
  const { share, across, options, working, settings } = sheet;
  const name = headline(sheet);
  const covers = { ...headWords.covers, ...(sheet.salt === undefined ? {} : saltWords.covers) };
  const shares = across((sample) => share(name, sample));
  const [spread, weighing] = [spreadOf(sheet, name), weighingOf(sheet, name)];
  const times = when(
    is(spread, ">", reckon(WORTH_SAYING, "*", weighing)),
    covers.times(fn("FIXED", reckon(spread, "/", weighing), 0, true)),
    NOTHING,
  );
  const rounding = when(isNumber(settings.repeatability), NOTHING, covers.roundingOnly);
  const toDry = isYetToDry(sheet);
  const told = ({ weighed, drying }: { readonly weighed: string; readonly drying: string }): Expression => when(toDry, drying, weighed);
  const what = { alone: told(covers.what.alone), each: told(covers.what.each), scatter: told(covers.what.scatter) };
  const kind = sheet.charring !== undefined ? "charring" : sheet.stages !== undefined ? "stages" : "drying";
  const others = joined(covers.others[kind], told(covers.toCome));
  const several = [
    [all(is(working.inUse, ">", 1), areRepeats(sheet), is(fn("COUNT", shares), ">", 1)), covers.scatter(what.scatter, working.inUse, times, others)],
    [is(working.inUse, ">", 1), covers.each(what.each, rounding, others)],
  ] as const;
  const [table] = sheet.fired;
  // While the answer has no ±: withheld, not judged, unfinished, or waiting for a sample.
  const hasNone = any(
    is(counted(checks, verdicts.contradiction), ">", 0),
    isAbsent(sheet),
    isNotDry(sheet),
    is((table ?? sheet.drying).allSteady, "=", 0),
    is(fn("COUNT", shares), "<", fn("MAX", 1, working.inUse)),
    is(fn("COUNT", working.together(name)), "=", 0),
  );
  const disagree = checks.agree === undefined ? [] : ([[haveNoCommonValue(sheet, name), covers.each(what.each, rounding, others)]] as const);
  const isSeveral = options.replicates > 1;
  const before = isSeveral ? when(areKeptApart(sheet), covers.beforeEach, covers.before(true)) : covers.before(false);
  return firstOf([[hasNone, before], ...(isSeveral ? [...disagree, ...several] : [])], covers.alone(what.alone, rounding, others));
}
