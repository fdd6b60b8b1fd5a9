import { areaNamed } from "../../workbook/areaNamed";
import { lookNumbers } from "../../workbook/seriesLooks";
import type { ChartSeries, PlannedChart } from "../../workbook/SheetPlan";
import type { Chart, Curves, Line, Point } from "./Chart";

/** What a cell holds, its row from 1, its column from 0; undefined where it is no number. */
export type NumberAt = (at: { readonly row: number; readonly column: number }) => number | undefined;

const POINTS_FOR_A_LINE = 2;

/**
 * A chart of a sheet's plan with the numbers that its cells hold: every drawing of it outside a spreadsheet has its lines, names and marks from
 * here. Of a run, whose points are joined, a lone weighing is no curve yet.
 */
export function plannedChart({ title, xTitle, yTitle, series, unforetold, isApart }: PlannedChart, numberAt: NumberAt, unit: string): Chart {
  const looks = lookNumbers(series);
  const pointsOf = (one: ChartSeries | undefined): readonly Point[] => (one === undefined ? [] : chartPoints(one, numberAt));
  const lines = series.flatMap((one, index): Line[] => {
    const draws = one.draws ?? "weighed";
    if (draws === "frame" || one.isUpper) return [];
    const [points, next] = [pointsOf(one), series[index + 1]];
    if (points.length < (isApart ? 1 : POINTS_FOR_A_LINE)) return [];
    const look = looks[index] ?? 0;
    const parted = isApart && draws === "weighed";
    const open = one.open === true || (parted === true && look > 0);
    return [
      {
        name: nameInKey(series, one),
        points,
        ...(next?.isUpper ? { upper: pointsOf(next) } : {}),
        draws,
        look: draws === "weighed" || !isApart ? look : 0,
        ...(parted ? { isApart } : {}),
        ...(open ? { open } : {}),
      },
    ];
  });
  const room = isApart ? undefined : { points: series.flatMap(pointsOf), unforetold: unforetold ?? [] };
  return { title, x: xTitle, y: yTitle, unit, lines, ...(room && { room }) };
}

export const hasCurves = ({ lines }: Pick<Chart, "lines">): boolean => lines.some(({ draws }) => draws === "weighed");

/** What goes on paper: the curves, or while there are none the axes and a key to draw them by hand; nothing where the axes are not known. */
export function chartOnPaper(planned: PlannedChart, numberAt: NumberAt): Curves | undefined {
  const { room, ...chart } = plannedChart(planned, numberAt, "");
  if (hasCurves(chart)) return chart;
  const looks = lookNumbers(planned.series);
  const lines = planned.series.flatMap(({ name, draws, open }, index): Line[] =>
    draws === undefined ? [{ name, points: [], draws: "weighed", look: looks[index] ?? 0, ...(open ? { open } : {}) }] : [],
  );
  return room && { ...chart, lines, room };
}

/** Limits and ends foretold look alike for all samples: those of the first say what they are. */
function nameInKey(series: readonly ChartSeries[], one: ChartSeries): string {
  if (one.draws === undefined || (one.look ?? 0) === 0) return one.name;
  const alike = (look: number): readonly ChartSeries[] => series.filter((other) => other.draws === one.draws && (other.look ?? 0) === look);
  return alike(0)[alike(one.look ?? 0).indexOf(one)]?.name ?? one.name;
}

/** The points of a series; one that only holds the place of the one before it is none. */
function chartPoints({ x, y }: ChartSeries, numberAt: NumberAt): readonly Point[] {
  const [across, up] = [areaNamed(x), areaNamed(y)];
  const found = Array.from({ length: up.rows }, (_, index) => index).flatMap((index) => {
    const [atX, atY] = [across, up].map((area) => numberAt({ row: area.row + index + 1, column: area.column }));
    return atX === undefined || atY === undefined ? [] : [{ x: atX, y: atY }];
  });
  return found.filter((point, index) => !isSame(point, found[index - 1]));
}

const isSame = (one: Point, other: Point | undefined): boolean => one.x === other?.x && one.y === other.y;
