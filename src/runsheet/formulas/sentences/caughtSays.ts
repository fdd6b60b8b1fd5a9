import { all, any, firstOf, NOTHING, noNumber, when } from "../../expressions/choices";
import { fn, is, reckon, type Expression } from "../../expressions/Expression";
import type { Caught } from "../../sheet/Caught";
import type { LedgerBox } from "../../sheet/caughtRows";
import { explainedBy } from "../explained";
import type { RunSheet } from "../../sheet/RunSheet";
import { caughtWords } from "../../words/caughtWords";
import { weighingWords } from "../../words/weighingWords";
import { grams } from "./rowSays";

const { says } = caughtWords;

/** What the sheet says of a part weighed after the fire. */
export function partSays(sheet: RunSheet, caught: Caught, part: number): Expression {
  const { working, across } = sheet;
  const gains = across((sample) => caught.gain(part, sample));
  const [before, after] = [across((sample) => caught.before(part, sample)), across((sample) => caught.after(part, sample))];
  const [explained, inAll] = [fn("N", working.explained), grams(sheet, fn("SUM", gains))];
  return firstOf(
    [
      [all(noNumber(after), is(working.next, "=", fn("ROW", caught.after(part, 1)))), weighingWords.says.next],
      [noNumber(before), when(is(fn("COUNT", after), ">", 0), says.notBefore, NOTHING)],
      [noNumber(after), NOTHING],
      [any(is(fn("COUNT", gains), "<", fn("COUNT", before)), is(fn("COUNT", gains), "<", fn("COUNT", after))), weighingWords.says.oneToWeigh],
      [is(fn("MIN", gains), "<", reckon(0, "-", explainedBy(sheet))), says.lighter],
      [is(fn("MAX", gains), "<=", explained), says.none],
    ],
    sheet.options.replicates === 1
      ? says.caught(inAll)
      : when(is(fn("COUNT", gains), ">", 1), says.caughtTogether(inAll, fn("COUNT", gains)), says.caught(inAll)),
  );
}

export function caughtTotalSays({ across, working }: RunSheet, caught: Caught): Expression {
  const liquids = across(caught.liquids);
  const begun = across((sample) => caught.after(0, sample));
  const pairs = across(caught.pairs);
  return firstOf(
    [[all(is(working.inUse, ">", 0), is(fn("COUNT", liquids), "=", working.inUse)), says.complete]],
    when(any(is(fn("COUNT", begun), ">", 0), is(fn("MAX", pairs), ">", 0)), says.incomplete, NOTHING),
  );
}

/** What was assumed, in words, beside each figure of the ledger. */
export function boxSays({ across, drying }: RunSheet, caught: Caught, name: LedgerBox): Expression {
  const isGiven = is(
    fn(
      "COUNT",
      across((sample) => caught.box(name, sample)),
    ),
    ">",
    0,
  );
  const isDried = is(fn("COUNT", across(drying.steady)), ">", 0);
  return {
    gas: when(isGiven, says.measured, says.byDifference),
    water: when(isGiven, says.waterFormed, says.waterBlank),
    fed: when(isDried, says.dried, when(isGiven, says.moist, NOTHING)),
    known: when(isGiven, says.counted, says.exact),
  }[name];
}
