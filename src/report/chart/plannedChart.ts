import { areaNamed } from "../../workbook/areaNamed";
import type { ChartSeries, PlannedChart } from "../../workbook/SheetPlan";
import type { ShownCells } from "../sheet/ShownCells";
import type { Chart, Line, Point } from "./Chart";

/** A chart of a sheet's plan with the numbers that its cells show; points of a series that blank rows part are not joined. */
export function plannedChart({ title, xTitle, yTitle, series }: PlannedChart, shown: ShownCells, unit: string): Chart {
  const weighed = series.filter(({ draws }) => draws === undefined);
  const lines = series.flatMap((one): Line[] => {
    const { points, isApart } = chartPoints(one, (at) => shown.number(at));
    const look = weighed.indexOf(one);
    const draws = one.draws ?? "weighed";
    return points.length === 0
      ? []
      : [{ name: one.name, points, draws, look: Math.max(look, 0), ...(isApart ? { isApart: true, ...(look > 0 ? { open: true } : {}) } : {}) }];
  });
  return { title, x: xTitle, y: yTitle, unit, lines };
}

/** The points of a series, and whether blank rows part them all. @param numberAt of a cell, its row from 1, its column from 0 */
export function chartPoints(
  { x, y }: ChartSeries,
  numberAt: (at: { readonly row: number; readonly column: number }) => number | undefined,
): { points: readonly Point[]; isApart: boolean } {
  const [across, up] = [areaNamed(x), areaNamed(y)];
  const found = Array.from({ length: up.rows }, (_, index) => index).flatMap((index) => {
    const [atX, atY] = [across, up].map((area) => numberAt({ row: area.row + index + 1, column: area.column }));
    return atX === undefined || atY === undefined ? [] : [{ index, point: { x: atX, y: atY } }];
  });
  const isApart = found.every(({ index }, place) => place === 0 || index > (found[place - 1]?.index ?? 0) + 1);
  return { points: found.map(({ point }) => point), isApart };
}
