import { BALANCE_CHECKED } from "../checks/balance/balanceChecks";
import { findingOf, verdictOf, type Check } from "../checks/Check";
import { CHECKS } from "../checks/everyCheck";
import { lastTruth } from "../checks/truths";
import { cell } from "../expressions/Expression";
import { withTruth } from "../formulas/truths";
import { wrongClock, wrongHeld } from "../formulas/wrongBoxes";
import type { BalanceSheet } from "../sheet/BalanceSheet";
import { CLOCK, LABEL } from "../sheet/Columns";
import type { CheckRows } from "../sheet/layout";
import type { RunSheet, Sheet } from "../sheet/RunSheet";
import { balanceCheckWords } from "../words/balance/balanceCheckWords";
import { checkWords } from "../words/checkWords";
import { sheetWords } from "../words/sheetWords";
import { band, calculated, ofCells, together, working, workingLabel, type Block, type BlockCell } from "./Block";

/** What the sheet can tell about the run itself, a line each: a verdict, and where something is wrong the sentence about it. */
export const checksBlock = (sheet: RunSheet): Block =>
  together(
    checkLines(sheet, sheet.rows.checks, checkWords.names, (check) => CHECKS[check](sheet)),
    ofCells(
      workingLabel(sheet, sheet.working.wrongClock.row, sheetWords.workings.wrongBoxes),
      working(sheet.working.wrongClock, withTruth(wrongClock(sheet), lastTruth(sheet))),
      ...(sheet.fired.length === 0 ? [] : [working(sheet.working.wrongHeld, wrongHeld(sheet))]),
    ),
  );

/** The same of a balance check. */
export const balanceChecksBlock = (sheet: BalanceSheet): Block =>
  checkLines(sheet, sheet.rows.checks, balanceCheckWords.names, (check) => BALANCE_CHECKED[check](sheet));

function checkLines<Name extends string>(
  sheet: Sheet,
  { heading, lines }: CheckRows<Name>,
  names: Readonly<Record<Name, string>>,
  found: (check: Name) => Check | undefined,
): Block {
  const { verdict, finding } = checkWords.columns;
  return ofCells(
    ...band(sheet, heading, "runBand", { [LABEL]: checkWords.heading, [CLOCK]: verdict, [CLOCK + 1]: finding }),
    ...lines.flatMap(({ check, row }, index): BlockCell[] => {
      const label: BlockCell = { at: cell(row, LABEL), content: checkWords.numbered(index + 1, names[check]), style: "runLabel" };
      const looked = found(check);
      if (looked === undefined) return [label];
      const at = cell(row, CLOCK + 1);
      return [label, calculated(cell(row, CLOCK), verdictOf(looked, at), "runLabel"), calculated(at, findingOf(looked), "runFinding")];
    }),
  );
}
