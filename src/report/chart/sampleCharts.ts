import { firingsPlanned } from "../../runsheet/blocks/curvesBlock";
import { readWeighings } from "../../runsheet/reading/readWeighings";
import type { WeighingSeries } from "../../runsheet/reading/WeighingSeries";
import { cell } from "../../runsheet/expressions/Expression";
import type { RunSheet } from "../../runsheet/sheet/RunSheet";
import type { Fired } from "../../runsheet/sheet/Weighed";
import { sheetWords } from "../../runsheet/words/sheetWords";
import { stageWords } from "../../runsheet/words/stageWords";
import type { RangeReading } from "../../workbook/Workbook";
import type { ShownCells } from "../sheet/ShownCells";
import { reportWords } from "../words/reportWords";
import type { Chart, Line, Point } from "./Chart";
import { plannedChart } from "./plannedChart";

const POINTS_FOR_A_LINE = 2;
const IN_PERCENT = 100;

/** The curves of a run on samples, as far as it has come; a curve of fewer than two weighings has no line. */
export const sampleCharts = (reading: RangeReading, sheet: RunSheet, shown: ShownCells): readonly Chart[] => [
  dryingChart(reading),
  ...(sheet.stages === undefined ? firingChart(sheet, shown) : [stagesChart(sheet, sheet.stages, shown)]),
];

/** The drying tables of a sheet, those of earlier versions and of a user's own too. */
export function dryingChart(reading: RangeReading): Chart {
  const series = readWeighings(reading).map((one, look) => ({ one, look }));
  const weighed = series.filter(({ one }) => one.points.length >= POINTS_FOR_A_LINE);
  return {
    title: sheetWords.chart.title,
    x: sheetWords.chart.x,
    y: sheetWords.chart.net,
    unit: "g",
    lines: weighed.flatMap(({ one, look }) => linesOf(one, look)),
  };
}

function linesOf({ name, points, band, foretold }: WeighingSeries, look: number): Line[] {
  const placed = (every: WeighingSeries["points"]): Point[] => every.map(({ minutes, grams }) => ({ x: minutes, y: grams }));
  return [
    { name, points: placed(points), draws: "weighed", look },
    ...(band === undefined
      ? []
      : [{ name: sheetWords.bandSeries(1), points: placed(band[0]), upper: placed(band[1]), draws: "limit", look } as const]),
    ...(foretold === undefined ? [] : [{ name: sheetWords.foretoldSeries(1), points: placed(foretold), draws: "foretold", look } as const]),
  ];
}

/** The sheet's own chart of the firings, without the vessels: a char or an ash less the vessel as it was while that was weighed. */
function firingChart(sheet: RunSheet, shown: ShownCells): readonly Chart[] {
  const planned = firingsPlanned(sheet);
  const [first, ashing] = sheet.fired;
  if (planned === undefined || first === undefined) return [];
  const chart = plannedChart(planned, (at) => shown.number(at), "g");
  const isAshed = ashing !== undefined && chart.lines.some(({ open }) => open);
  const lines = chart.lines.flatMap((line): Line[] => {
    const table = line.open === true || (line.draws === "limit" && isAshed) ? (ashing ?? first) : first;
    const vessel = shown.number(table.vessel(line.look + 1));
    if (vessel === undefined) return [];
    const less = (points: readonly Point[]): Point[] => points.map(({ x, y }) => ({ x, y: y - vessel }));
    return [{ ...line, points: less(line.points), ...(line.upper === undefined ? {} : { upper: less(line.upper) }) }];
  });
  return [{ title: chart.title, x: chart.x, y: reportWords.chart.left, unit: chart.unit, lines }];
}

/** What is left of the dry sample against temperature, from all of it on; only what was weighed is a point. */
function stagesChart(sheet: RunSheet, table: Fired, shown: ShownCells): Chart {
  const { columns, samples, options } = sheet;
  const lines = samples.flatMap((sample): Line[] => {
    const rows = [table.rows.heading, ...rowsOf(table).filter((row) => shown.number(table.box(row, sample)) !== undefined)];
    const points = rows.flatMap((row): Point[] => {
      const [x, left] = [shown.number(cell(row, columns.elapsed)), shown.number(columns.working(row, sample))];
      return x === undefined || left === undefined ? [] : [{ x, y: IN_PERCENT * left }];
    });
    return points.length < POINTS_FOR_A_LINE ? [] : [{ name: sheetWords.sample(sample), points, draws: "weighed", look: sample - 1 }];
  });
  return { title: stageWords.chart.title, x: stageWords.chart.x(options.degrees), y: reportWords.chart.leftPercent, unit: "%", lines };
}

const rowsOf = ({ rows: { first, last } }: Fired): readonly number[] => Array.from({ length: last - first + 1 }, (_, index) => first + index);
