import type { PlannedChart } from "../../workbook/SheetPlan";
import type { RangeReading } from "../../workbook/Workbook";
import { ofCells, working, type Block } from "../blocks/Block";
import { firstOf, isNumber, when } from "../expressions/choices";
import { cell, fn, is, range, reckon, type Expression } from "../expressions/Expression";
import { placeOf } from "../expressions/formulaText";
import { gatherWords } from "../words/gatherWords";
import { bandOf } from "./gatheredBlocks";
import { AT, WORK, type GatheredSheet } from "./GatheredSheet";
import { HeldCells } from "./HeldCells";
import { FEWEST } from "./rowFormulas";

/** What is drawn: each value in a row of its own with a blank one below it, so that no line joins samples, and the lines by their ends. */
export function chartBlock(sheet: GatheredSheet): Block {
  const { first, last, stats, band, runs, curves } = sheet;
  const { chart } = WORK;
  const drawn = (condition: Parameters<typeof when>[0], share: Expression): Expression => when(condition, share, fn("NA"));
  const inPercent = (of: Expression): Expression => reckon(100, "*", of);
  const ends = [first, last].map((row, index) => ({
    at: first + index,
    row: reckon(fn("ROW", cell(row, 0)), index === 0 ? "-" : "+", reckon(1, "/", 2)),
  }));
  return ofCells(
    ...bandOf(curves.heading, { 0: gatherWords.curves.heading, 2: gatherWords.curves.about }),
    ...runs.rows.flatMap((_, index) => {
      const [row, at] = [first + index, first + 2 * index];
      const [counted, own] = [cell(row, WORK.volatile.counted), cell(row, AT.volatile)];
      return [
        working(cell(at, chart.row), fn("ROW", cell(row, 0))),
        working(cell(at, chart.counted), drawn(isNumber(counted), inPercent(counted)), "0.00"),
        working(cell(at, chart.doubted), firstOf([[isNumber(counted), fn("NA")]], drawn(isNumber(own), inPercent(own))), "0.00"),
      ];
    }),
    ...ends.flatMap(({ at, row }) => [
      working(cell(at, chart.ends), row),
      working(cell(at, chart.median), drawn(is(stats.count, ">=", FEWEST), inPercent(fn("N", stats.median))), "0.00"),
      working(cell(at, chart.from), drawn(isNumber(band.countedFrom), band.countedFrom)),
      working(cell(at, chart.to), drawn(isNumber(band.countedTo), band.countedTo)),
    ]),
  );
}

/** The chart over them: values by the row they stand in, with the median and the band as lines. */
export const chartOf = ({ first, curves, runs }: GatheredSheet): PlannedChart =>
  chartFrom(first, runs.rows.length, placeOf(range(cell(curves.first, 0), cell(curves.last, AT.mark))));

/** The same of a gathered sheet as it stands, of whatever version; undefined where none does. */
export function gatheredChartOn(reading: RangeReading): PlannedChart | undefined {
  const held = new HeldCells(reading);
  const [headings, median] = [held.rowWith(gatherWords.columns[0], AT.run), held.rowWith(gatherWords.median, AT.run)];
  const isGathered = held.rowWith(gatherWords.title, AT.run) === 1;
  if (!isGathered || headings === undefined || median === undefined || median <= headings + 1) return undefined;
  return chartFrom(headings + 1, median - headings - 1, "A1");
}

function chartFrom(first: number, rows: number, over: string): PlannedChart {
  const { chart } = WORK;
  const { title, x, y } = gatherWords.chart;
  const down = (column: number, count: number): string => placeOf(range(cell(first, column), cell(first + count - 1, column)));
  const points = 2 * rows - 1;
  const series = gatherWords.series;
  const line = (name: string, column: number) => ({ name, x: down(chart.ends, 2), y: down(column, 2), draws: "limit" as const });
  return {
    title,
    xTitle: x,
    yTitle: y,
    series: [
      { name: series.counted, x: down(chart.row, points), y: down(chart.counted, points) },
      { name: series.doubted, x: down(chart.row, points), y: down(chart.doubted, points) },
      line(series.median, chart.median),
      line(series.from, chart.from),
      line(series.to, chart.to),
    ],
    isApart: true,
    over,
  };
}
