import type { Emphasis, SheetPlan } from "../../workbook/SheetPlan";
import { together, type Block } from "../blocks/Block";
import { calculatedAreas } from "../blocks/calculatedAreas";
import { calculatedRule } from "../blocks/entries";
import { plannedCell, plannedRule, rowHeights } from "../blocks/planned";
import { cell, fixed, fn, is, range, type Cell, type Range } from "../expressions/Expression";
import { formulaText, placeOf } from "../expressions/formulaText";
import { MARGINS, SCALE_PERCENT } from "../sheet/pages";
import { gatherWords } from "../words/gatherWords";
import { footBlock, headBlock, rowBlock, WIDTH } from "./gatheredBlocks";
import { chartBlock, chartOf } from "./gatheredChart";
import { AT, gatheredSheet, WIDTHS, WORK, type GatheredSheet } from "./GatheredSheet";
import type { RunsRead } from "./RunRow";

// Characters.
const BESIDE = { gap: 2, label: 38, workings: 12 } as const;
// The head with the headings stays in view and comes again on every page.
const HEAD_ROWS = 6;

/** A sheet with one row a sample of several runs, which follows them: references, built-in functions, no call of ours. */
export function buildGatheredSheet(runs: RunsRead): SheetPlan {
  const sheet = gatheredSheet(runs);
  const { cells, entryRules } = gatheredBlock(sheet);
  return {
    name: gatherWords.sheetName,
    cells: cells.map(plannedCell),
    columnWidths: [...WIDTHS, BESIDE.gap, BESIDE.label, ...new Array<number>(WORK.name - WORK.label).fill(BESIDE.workings)],
    rowHeights: rowHeights(sheet.heights),
    entryRules: [...entryRules, ...calculatedAreas(cells, WIDTH).map(calculatedRule)].map(plannedRule),
    emphasis: emphasisOf(sheet),
    charts: [chartOf(sheet)],
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

/** Everything on the sheet with formulas still as data. */
export const gatheredBlock = (sheet: GatheredSheet): Block =>
  together(headBlock(sheet), ...sheet.runs.rows.map((run, index) => rowBlock(sheet, run, sheet.first + index)), footBlock(sheet), chartBlock(sheet));

/** Lines and marks that begin with ▲ or ? stand out. */
function emphasisOf({ head, first, down }: GatheredSheet): Emphasis[] {
  const failed = (over: Range, at: Cell): Emphasis => {
    const mark = fn("LEFT", at, 1);
    return { range: placeOf(over), condition: formulaText(fn("OR", is(mark, "=", "▲"), is(mark, "=", "?"))), look: "failed" };
  };
  const line = (row: number, from: number): Emphasis => failed(range(cell(row, from), cell(row, AT.mark)), fixed(cell(row, from)));
  return [
    line(head.answer, AT.run),
    line(head.apart, AT.run),
    line(head.band, AT.volatile),
    ...[AT.trust, AT.mark].map((column) => failed(down(column), cell(first, column))),
  ];
}
