import { areaNamed } from "../../workbook/areaNamed";
import { lookNumbers } from "../../workbook/seriesLooks";
import type { ChartSeries, PlannedChart } from "../../workbook/SheetPlan";
import type { Chart, Curves, Line, Point } from "./Chart";

/** What a cell holds, its row from 1, its column from 0; undefined where it is no number. */
export type NumberAt = (at: { readonly row: number; readonly column: number }) => number | undefined;

const POINTS_FOR_A_LINE = 2;
const CORNERS_OF_A_BAND = 4;

/**
 * A chart of a sheet's plan with the numbers that its cells hold: every drawing of it outside a spreadsheet has its lines, names and marks from
 * here. A chart with a frame is of a run, whose points are joined and of which a lone weighing is no curve yet; any other is of points that
 * blank rows part, and those no line joins.
 */
export function plannedChart({ title, xTitle, yTitle, series, unforetold }: PlannedChart, numberAt: NumberAt, unit: string): Chart {
  const looks = lookNumbers(series);
  const frame = series.find(({ draws }) => draws === "frame");
  const lines = series.flatMap((one, index): Line[] => {
    const draws = one.draws ?? "weighed";
    if (draws === "frame") return [];
    const { points, isApart } = chartPoints(one, numberAt);
    if (points.length < (frame === undefined ? 1 : POINTS_FOR_A_LINE)) return [];
    const look = looks[index] ?? 0;
    const parted = frame === undefined && isApart;
    const open = one.open === true || (parted && look > 0);
    return [
      {
        name: nameInKey(series, one),
        ...(draws === "limit" ? edges(points) : { points }),
        draws,
        look: draws === "weighed" || frame !== undefined ? look : 0,
        ...(parted ? { isApart: true } : {}),
        ...(open ? { open } : {}),
      },
    ];
  });
  const room = frame && series.flatMap((one) => chartPoints(one, numberAt).points);
  return { title, x: xTitle, y: yTitle, unit, lines, ...(room === undefined ? {} : { room: { points: room, unforetold: unforetold ?? [] } }) };
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

/** A band's corners go along its lower edge and back along the upper one. */
function edges(points: readonly Point[]): Pick<Line, "points" | "upper"> {
  const [from, to, back, up] = points;
  return points.length < CORNERS_OF_A_BAND || from === undefined || to === undefined || back === undefined || up === undefined
    ? { points }
    : { points: [from, to], upper: [up, back] };
}

/** The points of a series, and whether blank rows part them all; a point that only holds the place of the one before it is none. */
function chartPoints({ x, y }: ChartSeries, numberAt: NumberAt): { readonly points: readonly Point[]; readonly isApart: boolean } {
  const [across, up] = [areaNamed(x), areaNamed(y)];
  const found = Array.from({ length: up.rows }, (_, index) => index).flatMap((index) => {
    const [atX, atY] = [across, up].map((area) => numberAt({ row: area.row + index + 1, column: area.column }));
    return atX === undefined || atY === undefined ? [] : [{ index, point: { x: atX, y: atY } }];
  });
  const isApart = found.every(({ index }, place) => place === 0 || index > (found[place - 1]?.index ?? 0) + 1);
  const points = found.map(({ point }) => point);
  return { points: points.filter((point, index) => !isSame(point, points[index - 1])), isApart };
}

const isSame = (one: Point, other: Point | undefined): boolean => one.x === other?.x && one.y === other.y;
