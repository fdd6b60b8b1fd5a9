import type { Curves, Line } from "../../report/chart/Chart";
import { chartPoints } from "../../report/chart/plannedChart";
import type { PlannedChart } from "../../workbook/SheetPlan";

const POINTS_FOR_A_LINE = 2;

/** A planned chart with what its cells hold; undefined until anything weighed makes a line. @param numberAt of a cell, rows and columns from 0 */
export function drawnChart(planned: PlannedChart, numberAt: (row: number, column: number) => number | undefined): Curves | undefined {
  const looks = { weighed: 0, limit: 0, foretold: 0 };
  const lines = planned.series.flatMap((series): Line[] => {
    const draws = series.draws ?? "weighed";
    const look = looks[draws]++;
    const { points } = chartPoints(series, ({ row, column }) => numberAt(row - 1, column));
    // Limits and ends foretold look alike for all samples, and one name in the key says what they are.
    const name = draws === "weighed" ? series.name : (planned.series.find((one) => one.draws === draws)?.name ?? series.name);
    return points.length < POINTS_FOR_A_LINE ? [] : [{ name, points, draws, look }];
  });
  const { title, xTitle: x, yTitle: y } = planned;
  return lines.some(({ draws }) => draws === "weighed") ? { title, x, y, lines } : undefined;
}
