import type { PlannedChart } from "../../workbook/SheetPlan";
import { cell, range } from "../expressions/Expression";
import { placeOf } from "../expressions/formulaText";
import type { RunSheet } from "../sheet/RunSheet";
import { sheetWords } from "../words/sheetWords";

// Beside the boxes of the run details, D to H.
const [FIRST_COLUMN, LAST_COLUMN] = [3, 7] as const;

/** Sample mass over time, one line a sample, beside the run details. */
export function dryingChart({ samples, columns: { at }, details, weighingUncertainty }: RunSheet): PlannedChart {
  const { title, x, y } = sheetWords.chart;
  return {
    title,
    xTitle: x,
    yTitle: y,
    series: samples.map(({ number, weighIns }) => ({
      name: sheetWords.sample(number),
      x: placeOf(weighIns(at.chartElapsed)),
      y: placeOf(weighIns(at.chartSample)),
    })),
    over: placeOf(range(cell(details.date.row, FIRST_COLUMN), cell(weighingUncertainty.row, LAST_COLUMN))),
  };
}
