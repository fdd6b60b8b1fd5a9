import { all, any, firstOf, NOTHING, sum, when, type Condition } from "../../expressions/choices";
import { fn, is, joined, reckon, type Expression, type Range } from "../../expressions/Expression";
import type { Caught } from "../../sheet/Caught";
import type { ShareName } from "../../sheet/layout";
import type { RunSheet } from "../../sheet/RunSheet";
import { checkWords } from "../../words/checkWords";
import { headWords } from "../../words/headWords";
import { isAbsent } from "./absence";
import { disagreeInLedger, isMarked, type ChecksAt } from "./checksSay";

const words = headWords.ledger;

/** The product ledger in a sentence, g of 100 g dry, the mean of repeats. */
export function productsSay(sheet: RunSheet, caught: Caught, checks: ChecksAt): Expression {
  const { across, share, plusMinus, working, setup, options } = sheet;
  const of = (name: ShareName): Range => across((sample) => share(name, sample));
  const per100 = (fraction: Expression): Expression => fn("FIXED", reckon(100, "*", fraction), 1, true);
  const mean = (name: ShareName): Expression => per100(fn("AVERAGE", of(name)));
  const ofEach = (name: ShareName): Condition => is(fn("COUNT", of(name)), "=", working.inUse);
  const off = options.replicates === 1 ? plusMinus("unaccounted", 1) : working.together("unaccounted");
  // Liquids and gas hold the feed's water too, so that the parts are more than 100 g of a sample fed moist.
  const feedWater = sheet.samples.map((sample) => fn("IFERROR", reckon(reckon(caught.fed(sample), "/", sheet.drying.net(sample)), "-", 1), 0));
  const fed = per100(reckon(sum(...feedWater), "/", fn("MAX", 1, working.inUse)));
  const isFedMoist = is(fn("COUNT", across(sheet.drying.steady)), "<", working.inUse);
  const formed = mean("waterFormed");
  const water = when(ofEach("waterFormed"), when(isFedMoist, words.waterOfMoist(formed), words.water(formed)), NOTHING);
  const gas = firstOf(
    [
      [ofEach("unaccounted"), words.measured(mean("gasMeasured"), mean("unaccounted"), per100(fn("N", off)))],
      [ofEach("gasDifference"), words.byDifference(mean("gasDifference"))],
    ],
    words.mixed,
  );
  const isDoubted = any(...(checks.ledger ?? []).map((at) => is(at, "=", checkWords.verdicts.doubt)), ...disagreeInLedger(checks));
  const told = joined(
    when(isDoubted, headWords.answer.inDoubt, NOTHING),
    words.told(when(isFedMoist, words.feedWater(fed), NOTHING), mean("charYield"), mean("liquidYield"), water, gas),
  );
  return firstOf(
    [
      [any(isMarked(checks), isAbsent(sheet)), words.waits],
      [
        all(is(working.inUse, ">", 0), ofEach("liquidYield"), ofEach("charYield")),
        options.replicates === 1 ? told : when(any(is(setup.samplesAre, "=", "repeats"), is(working.inUse, "=", 1)), told, words.different),
      ],
    ],
    words.invite(fn("ROW", caught.before(0, 1)), fn("ROW", caught.liquids(1))),
  );
}
