import uPlot from "uplot";
import type { Chart, Line, Point } from "../../../report/chart/Chart";
import { element } from "../../element";
import { chartKey } from "./chartKey";
import { pointsTable } from "./pointsTable";

const HEIGHT = 220;
const POINT_SIZE = 7;
const LINE_WIDTH = 2;
const THIN_WIDTH = 1;
const Y_AXIS_WIDTH = 52;
const LABEL_SIZE = 20;
const TICK_SPACING = 40;
const X_AXIS_HEIGHT = 34;
const GRID_WIDTH = 0.2;
const TICK_WIDTH = 0.5;
const AXIS_FONT = "12px system-ui, sans-serif";
// Lines differ by their dashes as well as by colour; the key shows the same pattern.
const DASHES: readonly (readonly number[])[] = [[], [8, 4], [2, 4], [10, 4, 2, 4], [16, 4], [2, 2]]; // prettier-ignore
const THIN_DASHES = { limit: [4, 2], foretold: [1, 3] } as const;
// Points at the same place of the axis would be one to the plotting library: far less than a pixel tells them apart.
const APART = 1e-6;

/** Draws a chart into a figure, with a key and a table of the same numbers. */
export function drawChart(figure: HTMLElement, chart: Chart): void {
  const key = chartKey(chart.lines);
  const plot = element("div", { class: "plot", role: "img", "aria-label": summaryOf(chart) });
  figure.append(element("figcaption", {}, chart.title), plot, key, pointsTable(chart));
  const drawn = chart.lines.flatMap((line) => [line.points, ...(line.upper === undefined ? [] : [line.upper])].map((points) => ({ line, points })));
  const span = spanOf(drawn.flatMap(({ points }) => points));
  const tables = drawn.map(({ points }) => tableOf(points, span * APART));
  const draw = (): uPlot =>
    new uPlot(
      optionsFor(
        figure,
        key,
        chart,
        drawn.map(({ line }) => line),
      ),
      uPlot.join(tables),
      plot,
    );
  keepInStep(figure, draw);
}

const spanOf = (points: readonly Point[]): number => Math.max(...points.map(({ x }) => x)) - Math.min(...points.map(({ x }) => x)) || 1;

/** The library wants its points from left to right. */
function tableOf(points: readonly Point[], apart: number): uPlot.AlignedData {
  const sorted = [...points].sort((one, other) => one.x - other.x);
  const xs: number[] = [];
  for (const { x } of sorted) xs.push(Math.max(x, (xs.at(-1) ?? -Infinity) + apart));
  return [xs, sorted.map(({ y }) => y)];
}

function summaryOf({ title, x, y, unit, lines }: Chart): string {
  const grams = (point: Point | undefined): string => `${Number(point?.y.toPrecision(FIGURES))} ${unit}`;
  const told = lines.map(({ name, points, draws }) => {
    if (draws !== "weighed" && points.length > 0 && points.every((point) => point.y === points[0]?.y)) return `${name}: ${grams(points[0])}.`;
    return `${name}: from ${grams(points[0])} to ${grams(points.at(-1))}.`;
  });
  return `${title}: ${y}, against ${x}. ${told.join(" ")} The table below holds every point.`;
}
const FIGURES = 8;

function optionsFor(figure: HTMLElement, key: HTMLElement, { x, y }: Chart, lines: readonly Line[]): uPlot.Options {
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
  // The key holds one entry a sample, in its colour.
  const colourOf = ({ look }: Line): string => getComputedStyle(key.querySelector(`.series-${look + 1}`) ?? figure).color;
  return {
    width: figure.clientWidth,
    height: HEIGHT,
    scales: { x: { time: false } },
    legend: { show: false },
    cursor: { show: false },
    axes: [
      { ...axis(x), size: X_AXIS_HEIGHT },
      { ...axis(y), size: Y_AXIS_WIDTH },
    ],
    series: [{}, ...lines.map((line) => seriesOf(line, colourOf(line)))],
  };
}

function seriesOf({ name, draws, look, open, isApart }: Line, stroke: string): uPlot.Series {
  if (draws !== "weighed") return { label: name, stroke, width: THIN_WIDTH, dash: [...THIN_DASHES[draws]], spanGaps: true, points: { show: false } };
  return {
    label: name,
    stroke,
    width: isApart ? 0 : LINE_WIDTH,
    dash: [...(DASHES[look % DASHES.length] ?? [])],
    spanGaps: true,
    points: { show: true, size: POINT_SIZE, width: LINE_WIDTH, stroke, ...(open ? {} : { fill: stroke }) },
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
