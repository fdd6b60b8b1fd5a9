import type { PlannedChart } from "../SheetPlan";

/** A scatter chart with lines from the planned columns; cells without a value make a gap in the line. */
export async function drawChart(context: Excel.RequestContext, worksheet: Excel.Worksheet, planned: PlannedChart): Promise<void> {
  const [from = planned.over, to = from] = planned.over.split(":");
  const chart = worksheet.charts.add(Excel.ChartType.xyscatterLines, worksheet.getRange(from), Excel.ChartSeriesBy.columns);
  // How many series Excel makes of its own accord from a blank cell is not documented, so all of them give way to the planned ones.
  chart.series.load("items/name");
  await context.sync();
  chart.series.items.forEach((madeByExcel) => madeByExcel.delete());
  planned.series.forEach(({ name, x, y }, index) => {
    const series = chart.series.add(name);
    series.setXAxisValues(worksheet.getRange(x));
    series.setValues(worksheet.getRange(y));
    series.markerStyle = MARKERS[index % MARKERS.length] ?? Excel.ChartMarkerStyle.circle;
  });
  chart.title.text = planned.title;
  chart.axes.categoryAxis.title.text = planned.xTitle;
  chart.axes.valueAxis.title.text = planned.yTitle;
  chart.legend.visible = planned.series.length > 1;
  chart.displayBlanksAs = Excel.ChartDisplayBlanksAs.notPlotted;
  chart.setPosition(from, to);
}

/** A marker of its own for each series, so that lines are told apart without colour. */
const MARKERS = ["Circle", "Square", "Triangle", "Diamond", "X", "Plus"] as const;
