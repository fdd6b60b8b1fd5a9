import { isNumber, NOTHING, when } from "../../expressions/choices";
import { cell, fixed, fn, is, reckon } from "../../expressions/Expression";
import { checksSay } from "../../formulas/sentences/checksSay";
import { balanceAnswer, balanceCovers, nextRound, nextSays, runsSay } from "../../formulas/balance/answer";
import { explainedChange, roundApart } from "../../formulas/balance/history";
import { isRearranged, watchingTheChecks, watchingTheHead } from "../../formulas/slips/typedOver";
import type { BalanceSheet } from "../../sheet/BalanceSheet";
import { CLOCK, LABEL } from "../../sheet/Columns";
import { balanceWords } from "../../words/balance/balanceWords";
import { headWords } from "../../words/headWords";
import { kindWords } from "../../words/kindWords";
import { sheetWords } from "../../words/sheetWords";
import { calculated, ofCells, working, workingLabel, type Block } from "../Block";
import { checkColumns, NEXT, recordOf } from "../headBlock";

const { workings } = balanceWords;

/** What comes next, the answer, the checks, and what the answer stands on; beside them the workings. */
export function balanceHead(sheet: BalanceSheet): Block {
  const { rows, options, working: own, formats, readings, setup, columns } = sheet;
  const { head } = rows;
  const { lines } = rows.checks;
  const typedOver = fixed(cell(lines.find(({ check }) => check === "typedOver")?.row ?? 0, CLOCK));
  const checks = { ...checkColumns(lines), typedOver, agree: undefined, analysis: undefined };
  const [low, high] = own.limits;
  // While nothing is weighed the lines stand at the weight's own value, on a blank sheet at 0.
  const middle = when(isNumber(own.mean), own.mean, fn("N", setup.value));
  const scatter = when(is(middle, ">", 0), fn("MAX", reckon(2, "*", fn("N", own.scatter)), fn("N", setup.step)), 0);
  return ofCells(
    { at: cell(head.title, LABEL), content: kindWords[options.kind].title, style: "runTitle" },
    calculated(cell(head.title, NEXT), watchingTheChecks(sheet, nextSays(sheet)), "runStrong"),
    calculated(cell(head.answer, LABEL), when(isRearranged(sheet), headWords.answer.rearranged, balanceAnswer(sheet, checks)), "runAnswer"),
    calculated(cell(head.checks, LABEL), watchingTheHead(sheet, checksSay(checks)), "runStrong"),
    calculated(cell(head.covers, LABEL), balanceCovers(sheet), "runLine"),
    calculated(cell(head.openly, LABEL), runsSay(sheet, checks), "runLine"),
    workingLabel(sheet, head.title, sheetWords.workings.title),
    { at: cell(head.title, columns.elapsed), content: `${sheetWords.workings.madeWith}${recordOf(sheet)}`, style: "runWorking" },
    workingLabel(sheet, head.answer, workings.history),
    working(own.mean, when(is(fn("COUNT", readings), "=", 0), NOTHING, fn("AVERAGE", readings)), formats.uncertainty),
    working(own.scatter, when(is(fn("COUNT", readings), "<", 2), NOTHING, fn("STDEV", readings)), formats.uncertainty),
    working(own.count, fn("COUNT", readings)),
    workingLabel(sheet, head.checks, workings.next),
    working(own.next, nextRound(sheet)),
    working(own.explained, explainedChange(sheet), formats.uncertainty),
    working(own.apart, roundApart(sheet)),
    workingLabel(sheet, head.covers, workings.limits),
    workingLabel(sheet, head.openly, workings.limits),
    ...[low, high].flatMap((end, index) =>
      end === undefined
        ? []
        : [
            working(end.low, reckon(middle, "-", scatter), formats.corrected),
            working(end.mean, middle, formats.corrected),
            working(end.high, reckon(middle, "+", scatter), formats.corrected),
            working(end.at, index === 0 ? reckon(1, "+", 0) : reckon(fn("ROWS", readings), "-", 1), "0"),
          ],
    ),
  );
}
