import type { PlannedChart } from "../workbook/SheetPlan";
import { glossary } from "./glossary";
import type { Layout } from "./layout";
import { sampleCells } from "./sampleCells";

/** Sample mass over time, one line a sample, beside the run details. */
export const dryingChart = (rows: Layout): PlannedChart => ({
  title: glossary.chart.title,
  xTitle: glossary.chart.x,
  yTitle: glossary.chart.y,
  series: rows.samples.map((_, index) => ({
    name: glossary.sample(index + 1),
    x: chartRange(sampleCells(rows, index + 1).stretch(rows.table.letters.chartElapsed)),
    y: chartRange(sampleCells(rows, index + 1).stretch(rows.table.letters.chartSample)),
  })),
  over: `D${rows.details.date}:H${rows.weighingUncertainty}`,
});

const chartRange = (stretch: string): string => stretch.replaceAll("$", "");
