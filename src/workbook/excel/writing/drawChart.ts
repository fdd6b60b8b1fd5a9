import { isInKey, seriesLooks, type SeriesLook } from "../../seriesLooks";
import { ABOVE_ZERO, type ChartSeries, type PlannedChart } from "../../SheetPlan";

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
  const looks = seriesLooks(planned.series);
  planned.series.forEach((series, index) => addSeries(worksheet, chart, series, looks[index]));
  // The name tells a finished chart from one just begun.
  chart.name = planned.title;
  chart.title.text = planned.title;
  chart.axes.categoryAxis.title.text = planned.xTitle;
  chart.axes.valueAxis.title.text = planned.yTitle;
  for (const axis of planned.unforetold ?? []) (axis === "x" ? chart.axes.categoryAxis : chart.axes.valueAxis).numberFormat = ABOVE_ZERO;
  drawKey(chart, planned.series);
  chart.displayBlanksAs = Excel.ChartDisplayBlanksAs.notPlotted;
  chart.setPosition(from, to);
}

/**
 * Gives a chart its key, without the lines that it does not name. Whether one taken out still counts among the entries is not documented, so
 * the key is made anew and the last is taken out first.
 * @param series all lines of the chart in their order, undefined for one of a user's own
 */
export function drawKey(chart: Excel.Chart, series: readonly (ChartSeries | undefined)[]): void {
  chart.legend.visible = false;
  if (series.length < 2) return;
  chart.legend.visible = true;
  // Beside the curves: below them it takes half of a low chart on paper.
  chart.legend.position = Excel.ChartLegendPosition.right;
  for (const [index, one] of [...series.entries()].reverse())
    if (one !== undefined && !isInKey(one)) chart.legend.legendEntries.getItemAt(index).visible = false;
}

/** Adds a line to the chart. */
export function addSeries(worksheet: Excel.Worksheet, chart: Excel.Chart, planned: ChartSeries, look: SeriesLook | undefined): void {
  const series = chart.series.add(planned.name);
  setSeries(worksheet, series, planned);
  const { marker = "circle", dash = "solid", width = 1, colour = "" } = look ?? {};
  series.markerStyle = MARKERS[marker];
  series.markerForegroundColor = colour;
  series.markerBackgroundColor = look?.open ? HOLLOW : colour;
  const { line } = series.format;
  line.color = colour;
  line.weight = width;
  line.lineStyle = LINES[dash];
}

/** Gives a line its planned columns. */
export function setSeries(worksheet: Excel.Worksheet, series: Excel.ChartSeries, { x, y }: ChartSeries): void {
  series.setXAxisValues(worksheet.getRange(x));
  series.setValues(worksheet.getRange(y));
}

const HOLLOW = "#FFFFFF";

const MARKERS: Readonly<Record<SeriesLook["marker"], `${Excel.ChartMarkerStyle}`>> = {
  ...{ circle: "Circle", square: "Square", triangle: "Triangle", diamond: "Diamond" },
  ...{ x: "X", plus: "Plus", star: "Star", none: "None" },
};

/** Excel's own names; it has no long dashes here. */
const LINES: Readonly<Record<SeriesLook["dash"], `${Excel.ChartLineStyle}`>> = {
  ...{ solid: "Continuous", dash: "Dash", sysDash: "Dash", lgDash: "Dash" },
  ...{ sysDot: "Dot", dashDot: "DashDot", lgDashDotDot: "DashDotDot", none: "None" },
};
