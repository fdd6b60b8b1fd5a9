import type { PlannedChart } from "../../workbook/SheetPlan";
import { cell, range } from "../expressions/Expression";
import { placeOf } from "../expressions/formulaText";
import { LABEL } from "../sheet/Columns";
import type { RunSheet } from "../sheet/RunSheet";
import { sheetWords } from "../words/sheetWords";
import { band, ofCells, type Block } from "./Block";

export const curvesBlock = (sheet: RunSheet): Block =>
  ofCells(...band(sheet, sheet.rows.curves.heading, "runBand", { [LABEL]: sheetWords.curves.heading, [LABEL + 2]: sheetWords.curves.about }));

/** Weight over time, one line a sample, straight from the boxes: a blank one is no point. */
export function dryingChart({ samples, drying, columns, rows }: RunSheet): PlannedChart {
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
