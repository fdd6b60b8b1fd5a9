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
} from "../formulas/curves/curves";
import { drawnPoint, stagesFrame } from "../formulas/curves/drawnPoints";
import { bandedFirings, firedLowerEdge, firedUpperEdge, firingBandCells, firingBandEnds } from "../formulas/curves/firingBand";
import { LABEL } from "../sheet/Columns";
import type { RunSheet } from "../sheet/RunSheet";
import type { Fired, Weighed } from "../sheet/Weighed";
import { sheetWords } from "../words/sheetWords";
import { stageWords } from "../words/stageWords";
import { band, ofCells, working, workingLabel, type Block, type BlockCell } from "./Block";

const MINUTES = "0";
/** The first corner of the upper edge. */
const UPPER = 2;

/** Room for the curves, and beside them the points that nobody weighs. */
export function curvesBlock(sheet: RunSheet): Block {
  const { rows, samples, formats } = sheet;
  const { heading, first } = rows.curves;
  const cells = curveCells(sheet);
  const { workings, curves } = sheetWords;
  const ends = bandEnds(sheet, cells);
  const masses = (at: (sample: number) => Cell, formula: (sample: number) => BlockCell["formula"], format = formats.reckoned): BlockCell[] =>
    samples.map((sample) => working(at(sample), formula(sample) ?? 0, format));
  const edge = (corner: number, sample: number): BlockCell["formula"] =>
    corner === 0 ? lowerEdge(sheet, cells, sample) : corner === UPPER ? upperEdge(cells, sample) : cells.band(corner - 1, sample);
  return ofCells(
    ...band(sheet, heading, "runBand", { [LABEL]: curves.heading, [LABEL + 2]: sheet.stages === undefined ? curves.about : stageWords.curves }),
    { at: cell(heading, sheet.columns.elapsed), content: workings.bandEdges, style: "runWorkingHeading" },
    ...CORNERS.flatMap((corner): BlockCell[] => [
      workingLabel(sheet, first + corner, workings.band[corner]),
      ...masses((sample) => cells.band(corner, sample), (sample) => edge(corner, sample)), // prettier-ignore
    ]),
    ...ends.map((minutes, end) => working(cells.bandAt(end), minutes, MINUTES)),
    ...foretoldCells(sheet, cells, masses),
    ...firedBand(sheet, masses),
    ...frameCells(sheet),
    ...(sheet.options.panZeros ? drawnCells(sheet) : []),
  );
}

/** What belongs to each sample of a row of workings. */
type MassRow = (at: (sample: number) => Cell, formula: (sample: number) => BlockCell["formula"], format?: string) => BlockCell[];

/** The band of the firings under way, a row a corner. */
function firedBand(sheet: RunSheet, masses: MassRow): BlockCell[] {
  if (bandedFirings(sheet).length === 0) return [];
  const cells = firingBandCells(sheet);
  const labels = sheetWords.workings.firingBand;
  const edge = (corner: number, sample: number): BlockCell["formula"] =>
    corner === 0 ? firedLowerEdge(sheet, sample) : corner === UPPER ? firedUpperEdge(sheet, cells, sample) : cells.corner(corner - 1, sample);
  return [
    ...CORNERS.flatMap((corner): BlockCell[] => [
      workingLabel(sheet, cells.corner(corner, 1).row, labels[corner]),
      ...masses((sample) => cells.corner(corner, sample), (sample) => edge(corner, sample)), // prettier-ignore
    ]),
    ...firingBandEnds(sheet, cells).map((minutes, end) => working(cells.at(end), minutes, MINUTES)),
  ];
}

/** The frame of the stages' chart; the bands span the axes of the others. */
function frameCells(sheet: RunSheet): BlockCell[] {
  const { rows, columns, formats, stages } = sheet;
  if (stages === undefined) return [];
  const { first, heading } = rows.curves;
  const { x, y } = stagesFrame(sheet, stages);
  return [
    { at: columns.frame(heading, "x"), content: sheetWords.workings.frame, style: "runWorkingHeading" },
    working(columns.frame(first, "x"), x, MINUTES),
    working(columns.frame(first, "y"), y, formats.reckoned),
  ];
}

/** What counts of each weighing, where that is not what stands in the box. */
function drawnCells(sheet: RunSheet): BlockCell[] {
  const { drying, fired, stages, columns, samples, formats } = sheet;
  const tables = stages === undefined ? [drying, ...fired] : [drying];
  return tables.flatMap((table) => {
    const { heading, first, last } = table.rows;
    const others = table === drying ? [drying] : fired;
    const rows = Array.from({ length: last - first + 1 }, (_, index) => first + index);
    return [
      { at: columns.drawn(heading, 1, "x"), content: sheetWords.workings.drawnMinutes, style: "runWorkingHeading" as const },
      { at: columns.drawn(heading, 1, "y"), content: sheetWords.workings.drawn, style: "runWorkingHeading" as const },
      ...rows.flatMap((row) =>
        samples.flatMap((sample) => {
          const { x, y } = drawnPoint(sheet, table, others, row, sample);
          return [working(columns.drawn(row, sample, "x"), x, MINUTES), working(columns.drawn(row, sample, "y"), y, formats.reckoned)];
        }),
      ),
    ];
  });
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
  ...(sheet.stages === undefined ? [firingsPlanned(sheet)].filter((chart) => chart !== undefined) : [stagesChart(sheet, sheet.stages)]),
];

/** What is left against temperature, one line a sample, from the workings: one not weighed lies on the point before it. */
function stagesChart(sheet: RunSheet, { rows: { heading, total } }: Fired): PlannedChart {
  const { samples, columns, rows, options } = sheet;
  const { title, x, y } = stageWords.chart;
  return {
    title,
    xTitle: x(options.degrees),
    yTitle: y,
    series: [
      ...samples.map((sample) => ({
        name: sheetWords.sample(sample),
        x: placeOf(range(cell(heading, columns.elapsed), cell(total, columns.elapsed))),
        y: placeOf(range(columns.working(heading, sample), columns.working(total, sample))),
        look: sample - 1,
      })),
      frameSeries(sheet),
    ],
    over: besideDrying(columns, rows),
  };
}

function frameSeries({ columns, rows }: Pick<RunSheet, "columns" | "rows">): ChartSeries {
  const at = (axis: "x" | "y"): string => placeOf(columns.frame(rows.curves.first, axis));
  return { name: sheetWords.frameSeries, x: at("x"), y: at("y"), draws: "frame" };
}

/** The edges of a band, the lower one first. */
function bandSeries(name: string, sample: number, x: string, corner: (corner: number) => Cell): ChartSeries[] {
  const [lower, upper] = [0, UPPER].map((from) => placeOf(range(corner(from), corner(from + 1))));
  const one = { x, draws: "limit", look: sample - 1 } as const;
  return [
    { ...one, name, y: lower ?? "" },
    { ...one, name: sheetWords.upperEdgeSeries(name), y: upper ?? "", isUpper: true },
  ];
}

/** Weighings as they count, from the boxes themselves where that is what stands in them. */
function weighedSeries({ columns, options }: RunSheet, { rows: { first, total }, box }: Weighed, name: string, sample: number): ChartSeries {
  const down = (from: Cell, to: Cell): string => placeOf(range(from, to));
  const drawn = (axis: "x" | "y"): string => down(columns.drawn(first, sample, axis), columns.drawn(total, sample, axis));
  return {
    name,
    x: options.panZeros ? drawn("x") : down(cell(first, columns.elapsed), cell(total, columns.elapsed)),
    y: options.panZeros ? drawn("y") : down(box(first, sample), box(total, sample)),
    look: sample - 1,
  };
}

/**
 * Weight over time, one line a sample: a blank box is no point. With it the band in which the next weighing would count as dry, and the way to
 * the end that the curve foretells.
 */
function dryingChart(sheet: RunSheet): PlannedChart {
  const { samples, drying, columns, rows, fired } = sheet;
  const { title, x, y } = sheetWords.chart;
  // The empty row of the total belongs to the series, so that rows put in above it do.
  const { first } = drying.rows;
  const cells = curveCells(sheet);
  const last = fired.length === 0 ? columns.verdict : columns.box(first, columns.slots).column;
  const over = (from: Cell, to: Cell): string => placeOf(range(from, to));
  return {
    title,
    xTitle: x,
    yTitle: y,
    // Sample by sample, so that one added later comes last.
    series: [
      ...samples.flatMap((sample): ChartSeries[] => [
        weighedSeries(sheet, drying, sheetWords.sample(sample), sample),
        ...bandSeries(sheetWords.bandSeries(sample), sample, over(cells.bandAt(0), cells.bandAt(1)), (corner) => cells.band(corner, sample)),
        {
          name: sheetWords.foretoldSeries(sample),
          x: over(cells.latestAt(sample), cells.foretoldAt(sample)),
          y: over(cells.latest(sample), cells.foretold(sample)),
          draws: "foretold",
          look: sample - 1,
        },
      ]),
    ],
    unforetold: ["y"],
    over: over(cell(rows.curves.first, LABEL), cell(rows.curves.last, last)),
  };
}

/**
 * What is left after each firing, against the minutes held so far, ash after the char it comes from: side by side at the same minutes they
 * would read as one moment. The dry sample, far above, would flatten the curve. With it the band in which another firing as long as the last
 * counts as nothing lost.
 */
export function firingsPlanned(sheet: RunSheet): PlannedChart | undefined {
  const { samples, charring, ashing, heating, columns, rows } = sheet;
  const first = charring ?? heating;
  if (first === undefined) return undefined;
  const { title, x, y } = sheetWords.firingChart;
  const { corner, at } = firingBandCells(sheet);
  const minutes = placeOf(range(at(0), at(1)));
  const linesOf = (sample: number): ChartSeries[] => [
    weighedSeries(sheet, first, ashing === undefined ? sheetWords.sample(sample) : sheetWords.charSeries(sample), sample),
    ...(ashing === undefined ? [] : [{ ...weighedSeries(sheet, ashing, sheetWords.ashSeries(sample), sample), open: true as const }]),
    ...bandSeries(sheetWords.firingBandSeries(sample), sample, minutes, (place) => corner(place, sample)),
  ];
  return { title, xTitle: x, yTitle: y, series: samples.flatMap(linesOf), unforetold: ["x", "y"], over: besideDrying(columns, rows) };
}

const besideDrying = (columns: RunSheet["columns"], rows: RunSheet["rows"]): string =>
  placeOf(range(cell(rows.curves.first, columns.reckoned(1, 1).column), cell(rows.curves.last, columns.verdict)));
