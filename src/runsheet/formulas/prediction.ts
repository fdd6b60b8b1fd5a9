import { isNumber, NOTHING, orNothing, when, any } from "../expressions/choices";
import { fn, is, retort, type Expression } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import { weighingWords } from "../words/weighingWords";
import { countOf, vesselGiven } from "./weighings";

// DRYING.END gives the weighings still to come in this row and column of its table.
const WEIGHINGS_LEFT = [9, 2] as const;
// A straight line through fewer weighings fits them all, so it foretells nothing.
const FEWEST_WEIGHINGS = 3;

/**
 * How many more rounds the falling-rate curve foretells for a sample; empty once steady, and until the weighings can carry a curve.
 * Too few weighings, a gain or too much noise have no prediction; the table and the checks say what is wrong.
 */
export function weighingsLeft({ drying, settings, vessel }: RunSheet, sample: number): Expression {
  const { readability, limit, criterion } = settings;
  const end = retort("DRYING.END", drying.minutes, drying.counted(sample), vesselGiven(vessel(sample)), readability, limit, criterion);
  const canBeTold = orNothing(fn("INDEX", end, ...WEIGHINGS_LEFT));
  const steady = drying.steady(sample);
  const isWaiting = any(is(steady, "=", weighingWords.verdicts.notYet), is(steady, "=", weighingWords.verdicts.tooSoon));
  return when(
    is(countOf(drying, sample), "<", FEWEST_WEIGHINGS),
    NOTHING,
    when(isNumber(steady), NOTHING, orNothing(when(isWaiting, canBeTold, NOTHING))),
  );
}
