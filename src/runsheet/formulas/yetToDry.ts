import { all, countWhere, isNumber, NOTHING, product, sum, when, type Condition } from "../expressions/choices";
import { fn, is, reckon, type Expression } from "../expressions/Expression";
import type { ShareName } from "../sheet/layout";
import { isLedgerShare, isStageShare, STAGE_SHARES } from "../sheet/sharesOf";
import type { RunSheet } from "../sheet/RunSheet";
import { isByTheory } from "./salt";
import { countOf } from "./weighings";

// Fewer weighings show no curve.
const FEWEST_WEIGHINGS = 3;
// A round counts by what was lost after it, in u of one weighing: less than the first is rounding; and before a fall of more than the second
// the curve says little of its end.
const [COUNTS_U, FALLS_U] = [8, 32];
// Of the loss from there on, an upper bound: 2 u of a difference of two weighings, 2 sqrt(2) u, as 28 tenths.
const [MARGIN_U, TENTHS] = [28, 10];
// A loss that hardly slows foretells no end; then no more than so many times what was lost is foretold.
const MOST_TIMES = 4;
// Told in halves of u, so that what moves a ± by less than a tenth is none.
const PER_U = 2;

/**
 * What may still dry off a sample that was shown dry, g: of a loss that falls by one rate, with b lost from a round to the latest and a over
 * as long before it, b (b/a) + b (b/a)^2 + … = b / (a/b - 1) is to come. The round is the latest one after which something was lost that counts, or
 * the first one after the fall. Where the time before is the shorter, more is foretold. One rate through the last rounds: a slower tail that has not
 * shown is not foretold. By plain arithmetic, so that it follows the weights where Retort is not at hand.
 */
export function yetToDry({ drying, working }: RunSheet, sample: number): Expression {
  const { u } = working;
  const [counted, minutes, count] = [drying.counted(sample), drying.minutes, countOf(drying, sample)];
  const weight = (round: Expression): Expression => fn("INDEX", counted, round);
  const minute = (round: Expression): Expression => fn("INDEX", minutes, round);
  const latest = weight(count);
  const roundsBefore = (time: Expression): Expression => countWhere(product(fn("ISNUMBER", counted), is(minutes, "<", time)));
  const roundsAbove = (loss: number): Expression => countWhere(product(fn("ISNUMBER", counted), is(counted, ">=", sum(latest, product(loss, u)))));
  // From the middle round on, the second for three: there is as long before it, however many rounds showed nothing lost.
  const middle = fn("INT", reckon(sum(count, 1), "/", 2));
  const from = fn("MIN", reckon(count, "-", 1), fn("MAX", middle, roundsAbove(COUNTS_U), sum(roundsAbove(FALLS_U), 1)));
  const before = fn("MIN", reckon(from, "-", 1), sum(roundsBefore(reckon(product(2, minute(from)), "-", minute(count))), 1));
  const lost = sum(reckon(weight(from), "-", latest), reckon(product(MARGIN_U, u), "/", TENTHS));
  const slowed = reckon(reckon(reckon(weight(before), "-", weight(from)), "/", lost), "-", 1);
  const toCome = reckon(lost, "/", fn("MAX", slowed, reckon(1, "/", MOST_TIMES)));
  const isSeen = all(isNumber(drying.steady(sample)), isNumber(u), is(count, ">=", FEWEST_WEIGHINGS));
  const hasLost = is(reckon(weight(1), "-", latest), ">=", product(COUNTS_U, u));
  const told = fn("MAX", 0, reckon(product(fn("ROUND", reckon(product(PER_U, toCome), "/", u), 0), u), "/", PER_U));
  return when(isSeen, fn("IFERROR", when(hasLost, told, 0), 0), NOTHING);
}

/** Whether something is, of any sample, that the balance's figures show: half a display step and more. */
export function isYetToDry({ working, across, settings }: RunSheet): Condition {
  const most = fn("MAX", across(working.yetToDry));
  return all(is(most, ">", 0), is(reckon(2, "*", most), ">=", fn("N", settings.readability)));
}

/**
 * How far a share may be off by what was still to dry off when its sample was taken for dry, R g of D: it was water and counts as dry sample, and
 * leaves with what leaves first. Water is then too small by R / M of the moist sample M, or R (1 + U) / D on the dry basis; a share y that
 * stayed too small by y R / D, one that left too large by (1 - y) R / D; a later stage by its own share; in the ledger, where that water is caught
 * or lost, no share by more than R / D.
 */
export function offByDrying(sheet: RunSheet, name: ShareName, sample: number): Expression {
  const { drying, ashing, salt, working, share, plusMinus, vessel } = sheet;
  const toCome = fn("N", working.yetToDry(sample));
  const [dry, y] = [drying.net(sample), fn("N", share(name, sample))];
  if (salt !== undefined && isByTheory(name))
    return reckon(product(offByDrying(sheet, "lossOnHeating", sample), plusMinus(name, sample)), "/", plusMinus("lossOnHeating", sample));
  if (name === "moistureWet") return reckon(toCome, "/", reckon(drying.counted(sample).from, "-", vessel(sample)));
  const per = (part: Expression, of: Expression = dry): Expression => reckon(product(toCome, part), "/", of);
  if (name === "moistureDry") return per(sum(1, y));
  if (isLedgerShare(name)) return per(1);
  if (name === "charYieldAshFree" && ashing !== undefined) return per(y, reckon(dry, "-", ashing.net(sample)));
  const isWhatLeft = name === "volatile" || name === "lostInAll" || name === "lossOnHeating" || name === STAGE_SHARES[0];
  return per(isWhatLeft ? reckon(1, "-", y) : isStageShare(name) ? fn("ABS", y) : y);
}
