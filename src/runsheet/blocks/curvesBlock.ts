import type { ChartSeries, PlannedChart } from "../../workbook/SheetPlan";
import { cell, range, type Cell } from "../expressions/Expression";
import { placeOf } from "../expressions/formulaText";
import {
  bandEnds,
  CORNERS,
  curveCells,
  foretoldMinutes,
  foretoldPoint,
  latestMinutes,
  latestPoint,
  lowerEdge,
  upperEdge,
  type CurveCells,
} from "../formulas/curves";
import { bandedFirings, firedLowerEdge, firedUpperEdge, firingBandCells, firingBandEnds } from "../formulas/firingBand";
import { LABEL } from "../sheet/Columns";
import type { Fired, RunSheet } from "../sheet/RunSheet";
import { sheetWords } from "../words/sheetWords";
import { stageWords } from "../words/stageWords";
import { band, ofCells, working, workingLabel, type Block, type BlockCell } from "./Block";

const MINUTES = "0";

/** Room for the curves, and beside them the points that nobody weighs. */
export function curvesBlock(sheet: RunSheet): Block {
  const { rows, samples, formats } = sheet;
  const { heading, first } = rows.curves;
  const cells = curveCells(sheet);
  const { workings, curves } = sheetWords;
  const [from, to] = bandEnds(sheet, cells);
  const ends = [from, to, cells.bandAt(1), cells.bandAt(0)];
  const masses = (at: (sample: number) => Cell, formula: (sample: number) => BlockCell["formula"], format = formats.reckoned): BlockCell[] =>
    samples.map((sample) => working(at(sample), formula(sample) ?? 0, format));
  const edge = (corner: number, sample: number): BlockCell["formula"] =>
    corner === 0 ? lowerEdge(sheet, cells, sample) : corner === 2 ? upperEdge(cells, sample) : cells.band(corner - 1, sample);
  return ofCells(
    ...band(sheet, heading, "runBand", { [LABEL]: curves.heading, [LABEL + 2]: sheet.stages === undefined ? curves.about : stageWords.curves }),
    { at: cell(heading, sheet.columns.elapsed), content: workings.bandEdges, style: "runWorkingHeading" },
    ...CORNERS.flatMap((corner): BlockCell[] => [
      workingLabel(sheet, first + corner, workings.band[corner]),
      ...masses((sample) => cells.band(corner, sample), (sample) => edge(corner, sample)), // prettier-ignore
      working(cells.bandAt(corner), ends[corner] ?? 0, MINUTES),
    ]),
    ...foretoldCells(sheet, cells, masses),
    ...firedBand(sheet, bandedFirings(sheet), masses),
  );
}

/** What belongs to each sample of a row of workings. */
type MassRow = (at: (sample: number) => Cell, formula: (sample: number) => BlockCell["formula"], format?: string) => BlockCell[];

/** The band of one table of firings, a row a corner. */
function firedBand(sheet: RunSheet, table: Fired | undefined, masses: MassRow): BlockCell[] {
  if (table === undefined) return [];
  const cells = firingBandCells(sheet);
  const labels = sheetWords.workings.firingBand;
  const [from, to] = firingBandEnds(sheet, table, cells);
  const edge = (corner: number, sample: number): BlockCell["formula"] =>
    corner === 0 ? firedLowerEdge(sheet, table, sample) : corner === 2 ? firedUpperEdge(table, cells, sample) : cells.corner(corner - 1, sample);
  const ends = [from, to, cells.at(1), cells.at(0)];
  return CORNERS.flatMap((corner): BlockCell[] => [
    workingLabel(sheet, cells.at(corner).row, labels[corner]),
    ...masses((sample) => cells.corner(corner, sample), (sample) => edge(corner, sample)), // prettier-ignore
    working(cells.at(corner), ends[corner] ?? 0, MINUTES),
  ]);
}

function foretoldCells(sheet: RunSheet, cells: CurveCells, row: MassRow): BlockCell[] {
  const { latest, foretold, latestAt, foretoldAt } = sheetWords.workings;
  return [
    workingLabel(sheet, cells.latest(1).row, latest),
    ...row(cells.latest, (sample) => latestPoint(sheet, sample)),
    workingLabel(sheet, cells.foretold(1).row, foretold),
    ...row(cells.foretold, (sample) => foretoldPoint(sheet, cells, sample)),
    workingLabel(sheet, cells.latestAt(1).row, latestAt),
    ...row(cells.latestAt, (sample) => latestMinutes(sheet, sample), MINUTES),
    workingLabel(sheet, cells.foretoldAt(1).row, foretoldAt),
    ...row(cells.foretoldAt, (sample) => foretoldMinutes(sheet, cells, sample), MINUTES),
  ];
}

/** The curves of a run: its drying, and beside that its firings or stages where it has any. */
export const runCharts = (sheet: RunSheet): PlannedChart[] => [
  dryingChart(sheet),
  ...(sheet.stages === undefined ? firingChart(sheet) : [stagesChart(sheet, sheet.stages)]),
];

/** What is left against temperature, one line a sample, from the workings: one not weighed lies on the point before it. */
function stagesChart({ samples, columns, rows, options }: RunSheet, { rows: { heading, total } }: Fired): PlannedChart {
  const { title, x, y } = stageWords.chart;
  return {
    title,
    xTitle: x(options.degrees),
    yTitle: y,
    series: samples.map((sample) => ({
      name: sheetWords.sample(sample),
      x: placeOf(range(cell(heading, columns.elapsed), cell(total, columns.elapsed))),
      y: placeOf(range(columns.working(heading, sample), columns.working(total, sample))),
    })),
    over: besideDrying(columns, rows),
  };
}

/**
 * Weight over time, one line a sample, straight from the boxes: a blank one is no point. With it the band in which the next weighing would
 * count as dry, and the way to the end that the curve foretells.
 */
export function dryingChart(sheet: RunSheet): PlannedChart {
  const { samples, drying, columns, rows, fired } = sheet;
  const { title, x, y } = sheetWords.chart;
  // The empty row of the total belongs to the series, so that rows put in above it do.
  const { first, total } = drying.rows;
  const cells = curveCells(sheet);
  const last = fired.length === 0 ? columns.verdict : columns.box(first, columns.slots).column;
  const over = (from: Cell, to: Cell): string => placeOf(range(from, to));
  return {
    title,
    xTitle: x,
    yTitle: y,
    // Sample by sample, so that one added later comes last.
    series: samples.flatMap((sample): ChartSeries[] => [
      {
        name: sheetWords.sample(sample),
        x: over(cell(first, columns.elapsed), cell(total, columns.elapsed)),
        y: over(drying.box(first, sample), drying.box(total, sample)),
      },
      {
        name: sheetWords.bandSeries(sample),
        x: over(cells.bandAt(0), cells.bandAt(CORNERS.length - 1)),
        y: over(cells.band(0, sample), cells.band(CORNERS.length - 1, sample)),
        draws: "limit",
      },
      {
        name: sheetWords.foretoldSeries(sample),
        x: over(cells.latestAt(sample), cells.foretoldAt(sample)),
        y: over(cells.latest(sample), cells.foretold(sample)),
        draws: "foretold",
      },
    ]),
    over: over(cell(rows.curves.first, LABEL), cell(rows.curves.last, last)),
  };
}

/**
 * What is left after each firing, against the minutes held so far; the dry sample, far above, would flatten the curve. With it the band in
 * which another firing as long as the last counts as nothing lost.
 */
function firingChart(sheet: RunSheet): PlannedChart[] {
  const { samples, charring, ashing, heating, columns, rows } = sheet;
  const first = charring ?? heating;
  if (first === undefined) return [];
  const { title, x, y } = sheetWords.firingChart;
  const seriesOf = ({ rows: { first, total }, box }: Fired, name: string, sample: number): ChartSeries => ({
    name,
    x: placeOf(range(cell(first, columns.elapsed), cell(total, columns.elapsed))),
    y: placeOf(range(box(first, sample), box(total, sample))),
  });
  const bandOf = (sample: number): ChartSeries => {
    const { corner, at } = firingBandCells(sheet);
    const last = CORNERS.length - 1;
    return {
      name: sheetWords.firingBandSeries(sample),
      x: placeOf(range(at(0), at(last))),
      y: placeOf(range(corner(0, sample), corner(last, sample))),
      draws: "limit",
    };
  };
  const linesOf = (sample: number): ChartSeries[] =>
    ashing === undefined
      ? [seriesOf(first, sheetWords.sample(sample), sample), bandOf(sample)]
      : [seriesOf(first, sheetWords.charSeries(sample), sample), seriesOf(ashing, sheetWords.ashSeries(sample), sample)];
  return [
    {
      title,
      xTitle: x,
      yTitle: y,
      series: samples.flatMap(linesOf),
      over: besideDrying(columns, rows),
    },
  ];
}

const besideDrying = (columns: RunSheet["columns"], rows: RunSheet["rows"]): string =>
  placeOf(range(cell(rows.curves.first, columns.reckoned(1, 1).column), cell(rows.curves.last, columns.verdict)));
