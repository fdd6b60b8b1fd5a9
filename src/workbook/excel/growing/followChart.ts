import type { PlannedChart, SheetPlan } from "../../SheetPlan";
import { addSeries, setSeries } from "../writing/drawChart";

/** The chart of a plan, as it is on the sheet. */
export interface ChartThere {
  readonly chart: Excel.Chart;
  readonly series: readonly Excel.ChartSeries[];
}

/** Asks for the plan's chart by its name; whoever took it away or renamed it goes without. */
export function askForChart(worksheet: Excel.Worksheet, { chart }: SheetPlan): () => Excel.Chart | undefined {
  if (chart === undefined) return () => undefined;
  const there = worksheet.charts.load("items/name");
  return () => there.items.find(({ name }) => name === chart.title);
}

/** Asks for the lines of a chart; they may be read once the request has been answered. */
export function askForSeries(chart: Excel.Chart | undefined): ChartThere | undefined {
  if (chart === undefined) return undefined;
  const series = chart.series.load("items/name");
  return {
    chart,
    get series() {
      return series.items;
    },
  };
}

/** Gives the lines their new columns and adds those that are new; how each looks stays as the user may have made it. */
export function followChart(worksheet: Excel.Worksheet, { chart, series }: ChartThere, planned: PlannedChart): void {
  planned.series.forEach((line, index) => {
    const there = series.find(({ name }) => name === line.name);
    if (there === undefined) addSeries(worksheet, chart, line, index);
    else setSeries(worksheet, there, line);
  });
  chart.legend.visible = planned.series.length > 1;
  const [from = planned.over, to = from] = planned.over.split(":");
  chart.setPosition(from, to);
}
