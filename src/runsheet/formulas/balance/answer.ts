import { all, any, firstOf, isNumber, NOTHING, when } from "../../expressions/choices";
import { fixed, fn, is, joined, reckon, type Expression } from "../../expressions/Expression";
import type { BalanceSheet } from "../../sheet/BalanceSheet";
import { balanceWords } from "../../words/balance/balanceWords";
import { checkWords } from "../../words/checkWords";
import { headWords } from "../../words/headWords";
import { counted, isMarked, restsOnTypedOver, type ChecksAt } from "../sentences/checksSay";
import { areWrong } from "../wrongBoxes";
import { FEWEST_BEFORE, FEWEST_FOR_PLUS_MINUS } from "./history";
import { grams } from "./roundSays";

const words = balanceWords.head;

/** Whether every row of the rounds is filled. */
const isFull = ({ readings, working }: BalanceSheet) => is(working.count, ">=", reckon(fn("ROWS", readings), "-", 1));

/** The row of the next round, 0 where the table is full. */
export const nextRound = (sheet: BalanceSheet): Expression =>
  when(isFull(sheet), 0, reckon(fn("ROW", fixed(sheet.round(sheet.rows.rounds.first).reading)), "+", sheet.working.count));

export function nextSays(sheet: BalanceSheet): Expression {
  const { working, rows, round, corner } = sheet;
  const corners = when(
    all(is(working.count, ">", 0), is(fn("COUNT", corner("centre").box), "=", 0)),
    words.cornersToo(fn("ROW", corner("centre").box)),
    NOTHING,
  );
  return when(
    isFull(sheet),
    words.full(reckon(fn("ROW", fixed(round(rows.rounds.total).reading)), "-", 1)),
    joined(words.next(reckon(working.count, "+", 1), working.next), corners),
  );
}

/** How far the balance is off its check weight, in a sentence that begins with the verdict. */
export function balanceAnswer(sheet: BalanceSheet, checks: ChecksAt): Expression {
  const { working, setup, finding } = sheet;
  const { value: off, plusMinus } = finding("bias");
  const size = grams(sheet, fn("ABS", fn("N", off)), 1);
  const what = firstOf(
    [
      [is(size, "=", grams(sheet, 0, 1)), words.itsValue],
      [is(fn("N", off), ">", 0), words.more(size)],
    ],
    words.less(size),
  );
  const shows = words.shows(what, grams(sheet, fn("N", plusMinus), 1), working.count);
  return firstOf(
    [
      [is(working.count, "=", 0), words.nothing],
      [restsOnTypedOver(checks), headWords.answer.typedOver],
      [is(counted(checks, checkWords.verdicts.contradiction), ">", 0), words.withheld],
      [is(fn("COUNT", setup.value), "=", 0), words.noValue(fn("ROW", setup.value))],
      [any(areWrong([setup.step], "above 0"), areWrong([setup.known], "0")), words.unusable],
      [is(working.count, "<", 2), words.one],
      [is(working.count, "<", FEWEST_FOR_PLUS_MINUS), words.two],
      [isMarked(checks), joined(words.lookAgain, shows)],
      [is(working.count, "<=", FEWEST_BEFORE), joined(words.begun, shows, words.judgedFrom(FEWEST_BEFORE + 1))],
    ],
    joined(words.inOrder, shows),
  );
}

export const balanceCovers = ({ setup, finding }: BalanceSheet): Expression =>
  firstOf(
    [
      [is(fn("COUNT", finding("bias").plusMinus), "=", 0), words.coversBefore],
      [isNumber(setup.known), words.covers],
    ],
    words.coversExact,
  );

/** The figure that run sheets on this balance may take. */
export const runsSay = (sheet: BalanceSheet, checks: ChecksAt): Expression => {
  const { value } = sheet.finding("forRuns");
  return when(
    any(isMarked(checks), is(fn("COUNT", value), "=", 0), is(sheet.working.count, "<=", FEWEST_BEFORE)),
    words.runsWait(FEWEST_BEFORE + 1),
    words.runs(grams(sheet, fn("N", value), 1), sheet.setup.step),
  );
};
