import uPlot from "uplot";
import type { SeriesPoint, WeighingSeries } from "../../runsheet/reading/readWeighings";
import { sheetWords } from "../../runsheet/words/sheetWords";
import { element } from "../element";
import { besideKey, besideLine, linesBeside, type LineBeside } from "./linesBeside";

const HEIGHT = 220;
const POINT_SIZE = 7;
const LINE_WIDTH = 2;
const Y_AXIS_WIDTH = 44;
const LABEL_SIZE = 20;
const TICK_SPACING = 40;
const X_AXIS_HEIGHT = 34;
const GRID_WIDTH = 0.2;
const TICK_WIDTH = 0.5;
const AXIS_FONT = "12px system-ui, sans-serif";
// Lines differ by their dashes as well as by colour; the key shows the same pattern.
const DASHES: readonly (readonly number[])[] = [[], [8, 4], [2, 4], [10, 4, 2, 4], [16, 4], [2, 2]]; // prettier-ignore

/** Draws weighings against minutes into a figure, with a key and a table of the same numbers. */
export function drawDryingChart(figure: HTMLElement, series: readonly WeighingSeries[]): void {
  const beside = linesBeside(series);
  const key = element("ul", { class: "chart-key" }, ...series.map(({ name }, index) => keyItem(name, index)), ...besideKey(beside));
  const plot = element("div", { class: "plot", role: "img", "aria-label": summaryOf(series) });
  figure.append(plot, key, weighingTable(series));
  const tables = [...series.map(({ points }) => points), ...beside.map(({ points }) => points)].map(tableOf);
  const draw = (): uPlot => new uPlot(optionsFor(figure, key, series, beside), uPlot.join(tables), plot);
  keepInStep(figure, draw);
}

const keyItem = (name: string, index: number): HTMLElement =>
  element("li", { class: `series-${index + 1}` }, element("span", { class: "swatch", "aria-hidden": "true" }), name);

const tableOf = (points: readonly SeriesPoint[]): uPlot.AlignedData => [points.map(({ minutes }) => minutes), points.map(({ grams }) => grams)];

const summaryOf = (series: readonly WeighingSeries[]): string =>
  `Drying chart, grams against minutes. ${series.map(({ name, points }) => `${name}: from ${points[0]?.grams} g to ${points.at(-1)?.grams} g.`).join(" ")} The table below holds every weighing.`;

function optionsFor(figure: HTMLElement, key: HTMLElement, series: readonly WeighingSeries[], beside: readonly LineBeside[]): uPlot.Options {
  const ink = getComputedStyle(figure).color;
  const axis = (label: string): uPlot.Axis => ({
    label,
    stroke: ink,
    font: AXIS_FONT,
    labelFont: AXIS_FONT,
    labelSize: LABEL_SIZE,
    space: TICK_SPACING,
    grid: { stroke: ink, width: GRID_WIDTH },
    ticks: { stroke: ink, width: TICK_WIDTH },
  });
  const line = ({ name }: WeighingSeries, index: number): uPlot.Series => {
    const stroke = getComputedStyle(key.children[index] ?? figure).color;
    const dash = DASHES[index % DASHES.length];
    return {
      label: name,
      stroke,
      width: LINE_WIDTH,
      dash: [...(dash ?? [])],
      spanGaps: true,
      points: { show: true, size: POINT_SIZE, stroke, fill: stroke },
    };
  };
  return {
    width: figure.clientWidth,
    height: HEIGHT,
    scales: { x: { time: false } },
    legend: { show: false },
    cursor: { show: false },
    axes: [
      { ...axis(sheetWords.chart.x), size: X_AXIS_HEIGHT },
      { ...axis(sheetWords.chart.net), size: Y_AXIS_WIDTH },
    ],
    series: [{}, ...series.map(line), ...beside.map((one) => besideLine(one, getComputedStyle(key.children[one.sample] ?? figure).color))],
  };
}

/** Draws, and draws again when the pane's width or its colours change, for as long as the figure shows this plot. */
function keepInStep(figure: HTMLElement, draw: () => uPlot): void {
  let plot = draw();
  const again = (): void => {
    plot.destroy();
    if (plot.root.isConnected || figure.isConnected) plot = draw();
  };
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const resized = new ResizeObserver(() => {
    if (!plot.root.isConnected) return stop();
    if (figure.clientWidth > 0 && figure.clientWidth !== plot.width) plot.setSize({ width: figure.clientWidth, height: HEIGHT });
  });
  const stop = (): void => {
    resized.disconnect();
    dark.removeEventListener("change", again);
  };
  dark.addEventListener("change", again);
  resized.observe(figure);
}

/** Every weighing of a chart as a table that can be opened below it. */
function weighingTable(series: readonly WeighingSeries[]): HTMLDetailsElement {
  const minutes = [...new Set(series.flatMap(({ points }) => points.map((point) => point.minutes)))].sort((a, b) => a - b);
  const gramsAt = ({ points }: WeighingSeries, time: number): string => String(points.find((point) => point.minutes === time)?.grams ?? "");
  const heading = element("tr", {}, ...["Minutes", ...series.map(({ name }) => `${name} (g)`)].map((text) => element("th", { scope: "col" }, text)));
  const rows = minutes.map((time) =>
    element("tr", {}, element("th", { scope: "row" }, String(time)), ...series.map((one) => element("td", {}, gramsAt(one, time)))),
  );
  const table = element("table", { class: "numbers" }, element("thead", {}, heading), element("tbody", {}, ...rows));
  return element(
    "details",
    {},
    element("summary", {}, "The weighings as a table"),
    element("div", { class: "wide", tabindex: "0", role: "group", "aria-label": "Weighings" }, table),
  );
}
