import { seriesLooks } from "../../seriesLooks";
import type { PlannedChart, SheetPlan } from "../../SheetPlan";
import { addSeries, drawKey, setSeries } from "../writing/drawChart";

/** A planned chart as it is on the sheet. */
export interface ChartThere {
  readonly planned: PlannedChart;
  readonly chart: Excel.Chart;
  readonly series: readonly Excel.ChartSeries[];
}

/** Asks for the plan's charts by their names; whoever took one away or renamed it goes without. */
export function askForCharts(worksheet: Excel.Worksheet, { charts = [] }: SheetPlan): () => Pick<ChartThere, "planned" | "chart">[] {
  if (charts.length === 0) return () => [];
  const there = worksheet.charts.load("items/name");
  return () =>
    charts.flatMap((planned) => {
      const chart = there.items.find(({ name }) => name === planned.title);
      return chart === undefined ? [] : [{ planned, chart }];
    });
}

/** Asks for the lines of charts. @returns them, once the request has been answered */
export function askForSeries(charts: readonly Pick<ChartThere, "planned" | "chart">[]): () => ChartThere[] {
  const asked = charts.map((one) => ({ ...one, series: one.chart.series.load("items/name") }));
  return () => asked.map(({ series, ...one }) => ({ ...one, series: series.items }));
}

/** Gives the lines their new columns and adds those that are new, to the key too; how each looks stays as the user may have made it. */
export function followChart(worksheet: Excel.Worksheet, { planned, chart, series }: ChartThere): void {
  const looks = seriesLooks(planned.series);
  const added = planned.series.filter((line, index) => {
    const there = series.find(({ name }) => name === line.name);
    if (there === undefined) addSeries(worksheet, chart, line, looks[index]);
    else setSeries(worksheet, there, line);
    return there === undefined;
  });
  if (added.length > 0) drawKey(chart, [...series.map(({ name }) => planned.series.find((line) => line.name === name)), ...added]);
  const [from = planned.over, to = from] = planned.over.split(":");
  chart.setPosition(from, to);
}
