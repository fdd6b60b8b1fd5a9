import type { Chart, Line, Point } from "../../report/chart/Chart";
import { cellArea } from "../../workbook/cellArea";
import type { ChartSeries, PlannedChart } from "../../workbook/SheetPlan";

const POINTS_FOR_A_LINE = 2;

/** A planned chart with what its cells hold; undefined until anything weighed makes a line. @param numberAt of a cell, rows and columns from 0 */
export function drawnChart(planned: PlannedChart, numberAt: (row: number, column: number) => number | undefined): Chart | undefined {
  const looks = { weighed: 0, limit: 0, foretold: 0 };
  const lines = planned.series.flatMap((series): Line[] => {
    const draws = series.draws ?? "weighed";
    const look = looks[draws]++;
    const points = pointsOf(series, numberAt);
    // Limits and ends foretold look alike for all samples, and one name in the key says what they are.
    const name = draws === "weighed" ? series.name : (planned.series.find((one) => one.draws === draws)?.name ?? series.name);
    return points.length < POINTS_FOR_A_LINE ? [] : [{ name, points, draws, look }];
  });
  const { title, xTitle: x, yTitle: y } = planned;
  return lines.some(({ draws }) => draws === "weighed") ? { title, x, y, lines } : undefined;
}

function pointsOf({ x, y }: ChartSeries, numberAt: (row: number, column: number) => number | undefined): Point[] {
  const [across, up] = [cellArea(x), cellArea(y)];
  if (across === undefined || up === undefined) return [];
  return Array.from({ length: Math.min(across.rows, up.rows) }, (_, index) => ({
    x: numberAt(across.row + index, across.column),
    y: numberAt(up.row + index, up.column),
  })).flatMap((point) => (point.x === undefined || point.y === undefined ? [] : [{ x: point.x, y: point.y }]));
}
