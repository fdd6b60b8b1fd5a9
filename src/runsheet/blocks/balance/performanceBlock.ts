import { firstOf, isNumber, NOTHING, when } from "../../expressions/choices";
import { cell, fixed, fn, is, type Cell, type Expression } from "../../expressions/Expression";
import { bias, biasPlusMinus, farthest, forRuns } from "../../formulas/balance/history";
import type { BalanceSheet } from "../../sheet/BalanceSheet";
import { PERFORMANCE, type BalanceCheck, type Performance } from "../../sheet/balanceRows";
import { CLOCK, LABEL } from "../../sheet/Columns";
import { balanceWords } from "../../words/balance/balanceWords";
import { checkWords } from "../../words/checkWords";
import { resultWords } from "../../words/resultWords";
import { sheetWords } from "../../words/sheetWords";
import { band, calculated, ofCells, type Block, type BlockCell } from "../Block";

const words = balanceWords.performance;

const ON_ROUNDS: readonly BalanceCheck[] = ["given", "dates", "rows", "newest", "typedOver"];
const BEARS: Readonly<Record<Performance, readonly BalanceCheck[]>> = {
  bias: [...ON_ROUNDS, "bias"],
  scatter: ON_ROUNDS,
  corner: ["corners", "typedOver"],
  zero: ["zero", "typedOver"],
  forRuns: [...ON_ROUNDS, "corners"],
};

/** What a balance check finds, with how far each figure is to be trusted. */
export function performanceBlock(sheet: BalanceSheet): Block {
  const { rows, columns, formats, finding } = sheet;
  const { heading, foot } = rows.performance;
  const found = founds(sheet);
  return ofCells(
    ...band(sheet, heading, "runBand", {
      [LABEL]: words.heading,
      [CLOCK]: words.columns.trust,
      [columns.box(1, 1).column]: words.columns.value,
      [columns.reckoned(1, 1).column]: words.columns.plusMinus,
      [columns.verdict]: sheetWords.says,
    }),
    ...PERFORMANCE.flatMap((name): BlockCell[] => {
      const at = finding(name);
      const { value, says, plusMinus } = found[name];
      return [
        { at: cell(at.trust.row, LABEL), content: words.labels[name], style: name === "bias" ? "runTotal" : "runLabel" },
        calculated(at.trust, trustOf(sheet, name, at.value), "runMark"),
        calculated(at.value, value, name === "bias" ? "runTotalNumber" : "runReckoned", formats.uncertainty),
        plusMinus === undefined ? { at: at.plusMinus, style: "runBeside" } : calculated(at.plusMinus, plusMinus, "runReckoned", formats.uncertainty),
        calculated(at.says, when(isNumber(at.value), says, NOTHING), "runVerdict"),
      ];
    }),
    { at: cell(foot, LABEL), content: words.foot, style: "runHelp" },
  );
}

function founds(sheet: BalanceSheet): Readonly<Record<Performance, { value: Expression; plusMinus?: Expression; says: Expression }>> {
  const { working, largestOff, zeros, finding } = sheet;
  const own = finding("bias");
  const isWithin = is(fn("ABS", fn("N", own.value)), "<=", fn("N", own.plusMinus));
  const contradicted = (value: Expression): Expression =>
    when(is(verdictOf(sheet, "slip"), "=", checkWords.verdicts.contradiction), resultWords.withheld, value);
  const judged = when(isNumber(own.plusMinus), when(isWithin, words.says.explained, words.says.biased), NOTHING);
  return {
    bias: { value: contradicted(bias(sheet)), plusMinus: contradicted(biasPlusMinus(sheet)), says: judged },
    scatter: { value: contradicted(when(isNumber(working.scatter), working.scatter, NOTHING)), says: words.says.ofRounds(working.count) },
    corner: { value: when(isNumber(largestOff), largestOff, NOTHING), says: words.says.corner },
    zero: { value: farthest(zeros), says: words.says.zero },
    forRuns: { value: contradicted(forRuns(sheet)), says: words.says.forRuns },
  };
}

const rowOf = ({ rows }: BalanceSheet, name: BalanceCheck): number => rows.checks.lines.findIndex(({ check }) => check === name);
const verdictOf = (sheet: BalanceSheet, name: BalanceCheck): Cell => fixed(cell(sheet.rows.checks.lines[rowOf(sheet, name)]?.row ?? 0, CLOCK));

/** "✓", or the first check that puts the line in doubt, by its number. */
function trustOf(sheet: BalanceSheet, name: Performance, value: Cell): Expression {
  const { contradiction, doubt } = checkWords.verdicts;
  const isOfRounds = name !== "corner" && name !== "zero";
  const contradicted = (["typedOver", ...(isOfRounds ? (["slip"] as const) : [])] as const).map(
    (check) => [is(verdictOf(sheet, check), "=", contradiction), resultWords.contradicted(rowOf(sheet, check) + 1)] as const,
  );
  const doubting = BEARS[name].map((check) => [is(verdictOf(sheet, check), "=", doubt), resultWords.doubted(rowOf(sheet, check) + 1)] as const);
  return firstOf([...contradicted, [is(fn("COUNT", value), "=", 0), NOTHING], ...doubting], resultWords.trusted);
}
