import { all, any, firstOf, NOTHING, when } from "../expressions/choices";
import { fn, is, reckon, type Expression } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import { criticalRangeFactor } from "../../confidence/criticalRangeFactor";
import { areFarApart, headline } from "../formulas/answer";
import { optionBounds } from "../options/optionBounds";
import type { RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { step, type Check } from "./Check";

const words = checkWords.agree;

// In cell formulas a whole number over a power of ten; of a factor that is judged by two decimals.
const PER = 1_000_000;

/**
 * Critical-range factor f(n) of so many results, in millionths, as REPLICATES takes it (ISO 5725-6), written out so that the check needs no call of ours:
 * 2.772 for two, to six samples, which are the most that a sheet holds.
 */
const criticalFactor = (count: Expression): Expression =>
  Array.from({ length: optionBounds.replicates.atMost - 1 }, (_, index) => index + 2)
    .map((n) => ({ n, factor: Math.round(criticalRangeFactor(n) * PER) }))
    .reduceRight<Expression>((next, { n, factor }) => (next === NOTHING ? factor : when(is(count, "=", n), factor, next)), NOTHING);

// Of fewer samples none can be told to stand apart.
const FEWEST_FOR_ONE_APART = 3;

/** Whether repeats agree: their common ± within the wanted one, and their range within the critical range of the method's own scatter. */
export function agreeCheck(sheet: RunSheet): Check | undefined {
  const { setup, across, share, plusMinus, working, settings } = sheet;
  if (sheet.options.replicates === 1) return undefined;
  const name = headline(sheet);
  const shares = across((sample) => share(name, sample));
  const spread = reckon(fn("MAX", shares), "-", fn("MIN", shares));
  const percent = fn("FIXED", reckon(100, "*", spread), 1, true);
  const times = fn(
    "FIXED",
    reckon(
      spread,
      "/",
      fn(
        "MAX",
        across((sample) => plusMinus(name, sample)),
      ),
    ),
    1,
    true,
  );
  const critical = reckon(reckon(criticalFactor(fn("COUNT", shares)), "*", settings.methodScatter), "/", PER);
  const together = working.together(name);
  const isUnsaid = all(is(setup.samplesAre, "=", ""), is(working.inUse, ">", 1));
  const areRepeats = all(is(setup.samplesAre, "=", "repeats"), is(fn("COUNT", shares), ">", 1));
  const isTooMuch = all(is(fn("COUNT", together, settings.wanted), "=", 2), is(fn("N", together), ">", settings.wanted));
  return {
    silentWhile: is(any(isUnsaid, areRepeats), "=", false),
    steps: [
      step(isUnsaid, words.sayWhich(nameOf(setup.samplesAre))),
      step(all(isTooMuch, areFarApart(sheet)), words.farApart(percent, times, apart(shares))),
      step(isTooMuch, words.differ(fn("FIXED", reckon(100, "*", fn("N", together)), 1, true), percent, times, apart(shares))),
      step(
        when(is(fn("COUNT", settings.methodScatter), "=", 0), false, is(spread, ">", critical)),
        words.beyondMethod(percent, fn("FIXED", reckon(100, "*", critical), 1, true), apart(shares)),
      ),
    ],
  };
}

// An end twice as far from the median as the other end stands apart; own bound, a hint and no verdict.
const TIMES_AS_FAR = 2;

/** The sample that stands apart from the others, where one does. */
function apart(shares: Expression): Expression {
  const median = fn("MEDIAN", shares);
  const [above, below] = [reckon(fn("MAX", shares), "-", median), reckon(median, "-", fn("MIN", shares))];
  const sampleWith = (share: Expression): Expression => words.apart(fn("MATCH", share, shares, 0));
  return firstOf(
    [
      [is(fn("COUNT", shares), "<", FEWEST_FOR_ONE_APART), NOTHING],
      [is(above, ">", reckon(TIMES_AS_FAR, "*", below)), sampleWith(fn("MAX", shares))],
      [is(below, ">", reckon(TIMES_AS_FAR, "*", above)), sampleWith(fn("MIN", shares))],
    ],
    NOTHING,
  );
}
