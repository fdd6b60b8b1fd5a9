import type { PlannedChart } from "../../workbook/SheetPlan";
import { cell, range } from "../expressions/Expression";
import { placeOf } from "../expressions/formulaText";
import { LABEL } from "../sheet/Columns";
import type { Fired, RunSheet } from "../sheet/RunSheet";
import { sheetWords } from "../words/sheetWords";
import { stageWords } from "../words/stageWords";
import { band, ofCells, type Block } from "./Block";

export const curvesBlock = (sheet: RunSheet): Block => {
  const about = sheet.stages === undefined ? sheetWords.curves.about : stageWords.curves;
  return ofCells(...band(sheet, sheet.rows.curves.heading, "runBand", { [LABEL]: sheetWords.curves.heading, [LABEL + 2]: about }));
};

export const runChart = (sheet: RunSheet): PlannedChart => (sheet.stages === undefined ? dryingChart(sheet) : stagesChart(sheet, sheet.stages));

/** What is left against temperature, one line a sample, from the workings: one not weighed lies on the point before it. */
function stagesChart({ samples, columns, rows, options }: RunSheet, { rows: { heading, total } }: Fired): PlannedChart {
  const { title, x, y } = stageWords.chart;
  return {
    title,
    xTitle: x(options.degrees),
    yTitle: y,
    series: samples.map((sample) => ({
      name: sheetWords.sample(sample),
      x: placeOf(range(cell(heading, columns.elapsed), cell(total, columns.elapsed))),
      y: placeOf(range(columns.working(heading, sample), columns.working(total, sample))),
    })),
    over: placeOf(range(cell(rows.curves.first, LABEL), cell(rows.curves.last, columns.verdict))),
  };
}

/** Weight over time, one line a sample, straight from the boxes: a blank one is no point. */
function dryingChart({ samples, drying, columns, rows }: RunSheet): PlannedChart {
  const { title, x, y } = sheetWords.chart;
  // The empty row of the total belongs to the series, so that rows put in above it do.
  const { first, total } = drying.rows;
  return {
    title,
    xTitle: x,
    yTitle: y,
    series: samples.map((sample) => ({
      name: sheetWords.sample(sample),
      x: placeOf(range(cell(first, columns.elapsed), cell(total, columns.elapsed))),
      y: placeOf(range(drying.box(first, sample), drying.box(total, sample))),
    })),
    over: placeOf(range(cell(rows.curves.first, LABEL), cell(rows.curves.last, columns.verdict))),
  };
}
