import type { BookState } from "../BookState";
import { notFound } from "../HostError";
import type { HostObject } from "../HostObject";
import type { ChartState, SeriesState, SheetState } from "../SheetState";

/** The charts of a sheet. */
export function chartsObject(book: BookState, sheet: SheetState): HostObject {
  const item = (id: string): HostObject => {
    const chart = sheet.charts.find((one) => one.id === id);
    if (!chart) throw notFound(id);
    return chartObject(chart);
  };
  return {
    kind: "ChartCollection",
    items: () => sheet.charts.map(chartObject),
    item,
    methods: {
      Add: (type: string) => {
        // Excel makes a series of its own from the range it is given.
        const chart: ChartState = { id: book.nextId(), type, series: [{ name: "Series1" }] };
        sheet.charts.push(chart);
        return chartObject(chart);
      },
    },
  };
}

function chartObject(chart: ChartState): HostObject {
  return {
    kind: "Chart",
    identity: () => ({ Id: chart.id }),
    reads: { Name: () => chart.name ?? "Chart 1" },
    writes: { Name: (name: string) => (chart.name = name), DisplayBlanksAs: (how: string) => (chart.blanks = how) },
    parts: {
      Series: () => seriesCollectionObject(chart),
      Title: () => ({ kind: "ChartTitle", writes: { Text: (text: string) => (chart.title = text) } }),
      Legend: () => ({
        kind: "ChartLegend",
        writes: {
          Visible: (visible: boolean) => {
            // A legend made anew has an entry a series.
            if (visible && chart.legend === false) for (const series of chart.series) delete series.isInKey;
            chart.legend = visible;
          },
          Position: (at: string) => (chart.legendAt = at),
        },
        parts: { LegendEntries: () => legendEntriesObject(chart) },
      }),
      Axes: () => ({
        kind: "ChartAxes",
        parts: {
          CategoryAxis: () => axisObject((text) => (chart.xTitle = text), (code) => (chart.xFormat = code)), // prettier-ignore
          ValueAxis: () => axisObject((text) => (chart.yTitle = text), (code) => (chart.yFormat = code)), // prettier-ignore
        },
      }),
    },
    methods: { SetPosition: (from: string, to: string) => void (chart.over = `${from}:${to}`) },
  };
}

const axisObject = (setTitle: (text: string) => void, setFormat: (code: string) => void): HostObject => ({
  kind: "ChartAxis",
  writes: { NumberFormat: setFormat },
  parts: { Title: () => ({ kind: "ChartAxisTitle", writes: { Text: setTitle } }) },
});

function seriesCollectionObject(chart: ChartState): HostObject {
  const item = (index: number): HostObject => {
    const series = chart.series[index];
    if (!series) throw notFound(`series ${index}`);
    return seriesObject(chart, series);
  };
  return {
    kind: "ChartSeriesCollection",
    items: () => chart.series.map((series) => seriesObject(chart, series)),
    item,
    methods: {
      GetItemAt: item,
      Add: (name: string) => {
        const series: SeriesState = { name };
        chart.series.push(series);
        return seriesObject(chart, series);
      },
    },
  };
}

/** An entry a series, in their order. */
const legendEntriesObject = (chart: ChartState): HostObject => ({
  kind: "ChartLegendEntryCollection",
  methods: {
    GetItemAt: (index: number): HostObject => {
      const series = chart.series[index];
      if (!series) throw notFound(`legend entry ${index}`);
      return { kind: "ChartLegendEntry", writes: { Visible: (visible: boolean) => (series.isInKey = visible) } };
    },
  },
});

const seriesObject = (chart: ChartState, series: SeriesState): HostObject => ({
  kind: "ChartSeries",
  reads: { Name: () => series.name },
  writes: {
    MarkerStyle: (style: string) => (series.marker = style),
    MarkerForegroundColor: (colour: string) => (series.colour = colour),
    MarkerBackgroundColor: (colour: string) => (series.inside = colour),
  },
  parts: {
    Format: () => ({
      kind: "ChartSeriesFormat",
      parts: {
        Line: () => ({
          kind: "ChartLineFormat",
          writes: {
            Color: (colour: string) => (series.colour = colour),
            Weight: (weight: number) => (series.weight = weight),
            LineStyle: (style: string) => (series.line = style),
          },
        }),
      },
    }),
  },
  methods: {
    Delete: () => void chart.series.splice(chart.series.indexOf(series), 1),
    SetXAxisValues: (range: HostObject) => void (series.x = String(range.reads?.Address?.())),
    SetValues: (range: HostObject) => void (series.y = String(range.reads?.Address?.())),
  },
});
