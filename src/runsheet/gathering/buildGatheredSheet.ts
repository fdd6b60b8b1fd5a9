import type { SheetPlan } from "../../workbook/SheetPlan";
import { together } from "../blocks/Block";
import { calculatedAreas } from "../blocks/calculatedAreas";
import { calculatedRule } from "../blocks/entries";
import { plannedCell, plannedRule, rowHeights } from "../blocks/planned";
import { cell, fn, is, range, type Cell } from "../expressions/Expression";
import { formulaText, placeOf } from "../expressions/formulaText";
import { MARGINS, SCALE_PERCENT } from "../sheet/pages";
import { gatherWords } from "../words/gatherWords";
import { footBlock, headBlock, rowBlock, WIDTH } from "./gatheredBlocks";
import { chartBlock, chartOf } from "./gatheredChart";
import { AT, gatheredSheet, WORK } from "./GatheredSheet";
import type { RunsRead } from "./RunRow";

// Characters. Printed together they stay within a page at 82 %, with slack for programs that draw columns wider.
const WIDTHS = { printed: [20, 9.5, 20, 8.43, 8.43, 8.43, 8.43, 8.43, 27], gap: 2, label: 38, workings: 12 } as const;
// The head with the headings stays in view and comes again on every page.
const HEAD_ROWS = 6;

/** A sheet with one row a sample of several runs, which follows them: references, built-in functions, no call of ours. */
export function buildGatheredSheet(runs: RunsRead): SheetPlan {
  const sheet = gatheredSheet(runs);
  const block = together(
    headBlock(sheet),
    ...runs.rows.map((run, index) => rowBlock(sheet, run, sheet.first + index)),
    footBlock(sheet),
    chartBlock(sheet),
  );
  const rules = [...block.entryRules, ...calculatedAreas(block.cells, WIDTH).map(calculatedRule)];
  return {
    name: gatherWords.sheetName,
    cells: block.cells.map(plannedCell),
    columnWidths: [...WIDTHS.printed, WIDTHS.gap, WIDTHS.label, ...new Array<number>(WORK.chart.to - WORK.label).fill(WIDTHS.workings)],
    rowHeights: rowHeights(sheet.heights),
    entryRules: rules.map(plannedRule),
    emphasis: [
      ...[sheet.head.answer, sheet.head.apart].map((row) => ({
        range: placeOf(range(cell(row, 0), cell(row, AT.mark))),
        ...failedFrom(cell(row, 0), "both"),
      })),
      {
        range: placeOf(range(cell(sheet.head.band, AT.volatile), cell(sheet.head.band, AT.mark))),
        ...failedFrom(cell(sheet.head.band, AT.volatile), "both"),
      },
      ...[AT.trust, AT.mark].map((column) => ({ range: placeOf(sheet.down(column)), ...failedFrom(cell(sheet.first, column), "nothing") })),
    ],
    chart: chartOf(sheet),
    frozenRows: HEAD_ROWS,
    gridlines: false,
    print: {
      area: placeOf(range(cell(1, 0), cell(sheet.lastRow, AT.mark))),
      titleRows: HEAD_ROWS,
      scale: SCALE_PERCENT,
      margins: MARGINS,
      footer: gatherWords.print,
      breaksBefore: sheet.breaks,
    },
    startAt: placeOf(sheet.band.from),
  };
}

/** What begins with a mark stands out. */
const failedFrom = (at: Cell, fixing: Cell["fixed"]) => {
  const mark = fn("LEFT", { ...at, fixed: fixing }, 1);
  return { condition: formulaText(fn("OR", is(mark, "=", "▲"), is(mark, "=", "?"))), look: "failed" as const };
};
