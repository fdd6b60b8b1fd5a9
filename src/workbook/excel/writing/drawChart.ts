import type { ChartSeries, PlannedChart } from "../../SheetPlan";

/**
 * Asks for a scatter chart with lines and, in the same request, for the series that Excel gives it. How many Excel makes of its
 * own accord from a blank cell is not documented, so all of them give way to the planned ones in finishChart.
 */
export function beginChart(worksheet: Excel.Worksheet, { over }: PlannedChart): Excel.Chart {
  const [from = over] = over.split(":");
  const chart = worksheet.charts.add(Excel.ChartType.xyscatterLines, worksheet.getRange(from), Excel.ChartSeriesBy.columns);
  chart.series.load("items/name");
  return chart;
}

/** Gives the chart its planned columns; cells without a value make a gap in the line. */
export function finishChart(worksheet: Excel.Worksheet, chart: Excel.Chart, planned: PlannedChart): void {
  const [from = planned.over, to = from] = planned.over.split(":");
  chart.series.items.forEach((madeByExcel) => madeByExcel.delete());
  planned.series.forEach((series, index) => addSeries(worksheet, chart, series, index));
  // The name tells a finished chart from one just begun.
  chart.name = planned.title;
  chart.title.text = planned.title;
  chart.axes.categoryAxis.title.text = planned.xTitle;
  chart.axes.valueAxis.title.text = planned.yTitle;
  chart.legend.visible = planned.series.length > 1;
  chart.displayBlanksAs = Excel.ChartDisplayBlanksAs.notPlotted;
  chart.setPosition(from, to);
}

/** Adds a line to the chart. @param index how many it has already */
export function addSeries(worksheet: Excel.Worksheet, chart: Excel.Chart, planned: ChartSeries, index: number): void {
  const series = chart.series.add(planned.name);
  setSeries(worksheet, series, planned);
  series.markerStyle = MARKERS[index % MARKERS.length] ?? Excel.ChartMarkerStyle.circle;
}

/** Gives a line its planned columns. */
export function setSeries(worksheet: Excel.Worksheet, series: Excel.ChartSeries, { x, y }: ChartSeries): void {
  series.setXAxisValues(worksheet.getRange(x));
  series.setValues(worksheet.getRange(y));
}

/** A marker of its own for each series, so that lines are told apart without colour. */
const MARKERS = ["Circle", "Square", "Triangle", "Diamond", "X", "Plus"] as const;
