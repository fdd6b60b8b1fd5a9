import { all, firstOf, isNumber, NOTHING, when } from "../../expressions/choices";
import { fixed, fn, is, reckon, type Expression } from "../../expressions/Expression";
import type { BalanceSheet } from "../../sheet/BalanceSheet";
import { decimalsOf } from "../../sheet/massFormats";
import type { Place } from "../../sheet/balanceRows";
import { balanceWords } from "../../words/balance/balanceWords";
import { weighingWords } from "../../words/weighingWords";
import { balanceCheckWords } from "../../words/balance/balanceCheckWords";
import { centresDiffer, isBeyond, isOtherWeight } from "./history";

const { says } = balanceWords.rounds;

/** Grams in a sentence: one figure more than the balance shows, as a mean has. */
export const grams = ({ options }: BalanceSheet, mass: Expression, more = 0): Expression =>
  fn("FIXED", mass, decimalsOf(options.readability) + more, true);

/** "0.03 g below": how far something lies above or below what the sentence names next. */
export const offBy = (sheet: BalanceSheet, mass: Expression, more = 0): Expression => {
  const { above, below } = balanceCheckWords.offBy;
  const size = grams(sheet, fn("ABS", mass), more);
  return when(is(mass, "<", 0), below(size), above(size));
};

/** What the sheet says of a round. */
export function roundSays(sheet: BalanceSheet, row: number): Expression {
  const { reading, date, off, apart, expected, zero } = sheet.round(row);
  const before = reckon(fn("ROW", reading), "-", fn("ROW", fixed(sheet.round(sheet.rows.rounds.first).reading)));
  const { warning, action } = isBeyond(sheet, apart, expected, before);
  const isZeroOff = all(isNumber(zero), is(fn("ABS", fn("N", zero)), ">", sheet.working.explained));
  return firstOf(
    [
      [is(fn("COUNTA", reading), "=", 0), when(is(sheet.working.next, "=", fn("ROW", reading)), weighingWords.says.next, NOTHING)],
      [fn("ISTEXT", reading), weighingWords.says.notANumber],
      [is(fn("COUNT", date), "=", 0), says.date],
      [when(isNumber(off), isOtherWeight(sheet, off), false), says.slip],
      [is(sheet.working.apart, "=", fn("ROW", reading)), says.apart],
      [all(isNumber(apart), is(sheet.working.apart, ">", 0)), says.waits(sheet.working.apart)],
      [action, says.farBeyond],
      [warning, says.beyond],
      [isZeroOff, says.zero(grams(sheet, zero))],
      [isNumber(apart), says.inOrder],
    ],
    says.begins,
  );
}

export function cornerSays(sheet: BalanceSheet, place: Place): Expression {
  const { off } = sheet.corner(place);
  const words = balanceWords.corners.says;
  const judged = when(is(fn("ABS", fn("N", off)), ">", sheet.working.explained), words.off, words.inOrder);
  return when(isNumber(off), when(centresDiffer(sheet), words.notJudged, judged), NOTHING);
}

export const roundsSay = ({ working }: BalanceSheet): Expression =>
  when(is(working.count, ">", 0), says.count(reckon(working.count, "+", 0)), NOTHING);
