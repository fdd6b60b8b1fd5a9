import type { ChartSeries, Emphasis, PlannedChart, SheetPlan } from "../../../workbook/SheetPlan";
import { when } from "../../expressions/choices";
import { cell, fn, is, range, reckon, type Cell } from "../../expressions/Expression";
import { formulaText, placeOf } from "../../expressions/formulaText";
import type { BalanceSheet } from "../../sheet/BalanceSheet";
import { PERFORMANCE } from "../../sheet/balanceRows";
import { CLOCK, LABEL } from "../../sheet/Columns";
import { balanceWords } from "../../words/balance/balanceWords";
import { sheetWords } from "../../words/sheetWords";
import { band, ofCells, together, working, workingLabel, type Block, type BlockCell } from "../Block";
import { cautionsBlock } from "../cautionsBlock";
import { balanceChecksBlock } from "../checksBlock";
import { failedAt, failedRow } from "../emphasis";
import { plannedSheet } from "../plannedSheet";
import { watched } from "../typedOverBlock";
import { balanceHead } from "./balanceHead";
import { cornersBlock, notesBlock } from "./cornersBlock";
import { performanceBlock } from "./performanceBlock";
import { roundsBlock } from "./roundsBlock";
import { weightBlock } from "./weightBlock";

/** A balance check as a plan. */
export const planBalanceSheet = (sheet: BalanceSheet): SheetPlan =>
  plannedSheet(sheet, balanceBlocks(sheet), {
    emphasis: emphasisOf(sheet),
    charts: [historyChart(sheet)],
    startAt: placeOf(sheet.setup.value),
  });

/** Its blocks with formulas still as data, each calculated cell watched. */
export function balanceBlocks(sheet: BalanceSheet): Block {
  const { curves, rounds, checks } = sheet.rows;
  const heading = { [LABEL]: sheetWords.curves.heading, [LABEL + 2]: balanceWords.curves };
  const every = together(
    balanceHead(sheet),
    weightBlock(sheet),
    roundsBlock(sheet),
    cornersBlock(sheet),
    performanceBlock(sheet),
    notesBlock(sheet),
    cautionsBlock(sheet),
    balanceChecksBlock(sheet),
    ofCells(...band(sheet, curves.heading, "runBand", heading), ...frameCells(sheet)),
  );
  // A reading of another weight leaves no answer; the other checks only mark it.
  const marks = new Set(checks.lines.filter(({ check }) => check !== "slip").map(({ row }) => row));
  return watched(sheet, every, { totals: [rounds.total], isAside: ({ row, column }) => marks.has(row) && column <= CLOCK + 1, decides: [] });
}

/** A point, not seen, that spans the upright axis of a blank sheet from below 0; the lines are at 0 there. */
function frameCells(sheet: BalanceSheet): BlockCell[] {
  const { rows, columns, working: own } = sheet;
  const [begin] = own.limits;
  if (begin === undefined) return [];
  const { first } = rows.curves;
  return [
    workingLabel(sheet, first, sheetWords.workings.frame),
    working(columns.frame(first, "x"), begin.at, "0"),
    working(columns.frame(first, "y"), when(is(begin.mean, ">", 0), begin.mean, reckon(0, "-", 1))),
  ];
}

/** The readings round by round, straight from the boxes, and the lines that they should lie between. */
export function historyChart({ rows, columns, round, working }: BalanceSheet): PlannedChart {
  const { title, x, y, readings, low, mean, high } = balanceWords.chart;
  const { first, total } = rows.rounds;
  const [begin, end] = working.limits;
  const line = (name: string, of: "low" | "mean" | "high", draws: "limit" | "foretold"): ChartSeries[] =>
    begin === undefined || end === undefined
      ? []
      : [{ name, x: placeOf(range(begin.at, end.at)), y: placeOf(range(begin[of], end[of])), draws, look: 0 }];
  const frame = (axis: "x" | "y"): string => placeOf(columns.frame(rows.curves.first, axis));
  return {
    title,
    xTitle: x,
    yTitle: y,
    series: [
      { name: readings, x: placeOf(range(round(first).number, round(total).number)), y: placeOf(range(round(first).reading, round(total).reading)) },
      ...line(low, "low", "foretold"),
      ...line(mean, "mean", "limit"),
      ...line(high, "high", "foretold"),
      { name: sheetWords.frameSeries, x: frame("x"), y: frame("y"), draws: "frame" },
    ],
    unforetold: ["y"],
    over: placeOf(range(cell(rows.curves.first, LABEL), cell(rows.curves.last, columns.verdict))),
  };
}

function emphasisOf(sheet: BalanceSheet): readonly Emphasis[] {
  const { rows, finding, working } = sheet;
  const { lines } = rows.checks;
  const [firstCheck, lastCheck] = [lines[0]?.row ?? 0, lines.at(-1)?.row ?? 0];
  const [top, bottom] = [finding("bias"), finding(PERFORMANCE.at(-1) ?? "bias")];
  const down = (from: Cell, to: Cell): Emphasis => failedAt({ ...from, fixed: "nothing" }, { ...to, fixed: "nothing" });
  const { first, last } = rows.rounds;
  return [
    failedRow(sheet, rows.head.answer),
    failedRow(sheet, rows.head.checks),
    down(top.trust, bottom.trust),
    down(top.says, bottom.says),
    failedAt(cell(firstCheck, CLOCK), cell(lastCheck, CLOCK)),
    failedAt(sheet.round(first).says, sheet.round(last).says),
    {
      range: placeOf(range(cell(first, LABEL), sheet.round(last).zero)),
      condition: formulaText(is(working.next, "=", fn("ROW"))),
      look: "next",
    },
  ];
}
