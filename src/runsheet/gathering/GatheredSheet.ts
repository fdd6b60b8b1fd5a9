import { cell, fixed, range, type Cell, type Range } from "../expressions/Expression";
import { beginPages, pageFor } from "../sheet/pages";
import { Rows } from "../sheet/Rows";
import { LOSSES, type GatheredShare, type LossName, type RunsRead } from "./RunRow";

/** Points, as on a run sheet: a box printed at 82 % is high enough to write in by hand. */
const HEIGHT = { band: 16.5, box: 21, row: 16, line: 15 } as const;
const HEAD = { title: 19.5, answer: 18, apart: 16.5, band: HEIGHT.box, about: HEIGHT.line, headings: HEIGHT.band } as const;
const CHART_ROWS = 17;

/** Characters, of the columns that are printed. */
export const WIDTHS = [17.9, 10.6, 18, 7.86, 7.86, 7.86, 7.86, 8.43, 28] as const;
/** Columns, from 0. */
export const AT = { run: 0, trust: 1, sample: 2, moistureWet: 3, volatile: 4, charYield: 5, ash: 6, plusMinus: 7, mark: 8 } as const;
/** Beyond what is printed, with a gap before them. */
export const WORK = {
  label: 10,
  volatile: { counted: 11, apart: 12 },
  z: 13,
  isApart: 14,
  outside: 15,
  moistureWet: { counted: 16, apart: 17 },
  charYield: { counted: 18, apart: 19 },
  ash: { counted: 20, apart: 21 },
  /** Row, counted, not counted; row of the lines' ends, median, band from, band to. */
  chart: { row: 23, counted: 24, doubted: 25, ends: 26, median: 27, from: 28, to: 29 },
  /** What the person named the sample. */
  name: 31,
} as const;

/** Where everything stands on the sheet that gathers runs. */
export interface GatheredSheet {
  readonly runs: RunsRead;
  readonly head: Readonly<Record<keyof typeof HEAD, number>>;
  readonly first: number;
  readonly last: number;
  readonly median: number;
  readonly scatter: number;
  /** Undefined where no run sheet was left out. */
  readonly leftOut: { readonly heading: number; readonly first: number } | undefined;
  /** Kinds of run that have a loss and no vapour share, one a row; undefined where there are none. */
  readonly without: { readonly heading: number; readonly first: number; readonly kinds: readonly LossName[] } | undefined;
  readonly curves: { readonly heading: number; readonly first: number; readonly last: number };
  readonly heights: readonly number[];
  readonly breaks: readonly number[];
  readonly lastRow: number;
  /** Vapour shares counted, their median, their median distance from it, how many stand apart, and beyond which z. */
  readonly stats: Readonly<Record<"count" | "median" | "mad" | "apart" | "beyond", Cell>>;
  /** The ends of the band that is typed, percent, and those that count: none while what is typed cannot be right. */
  readonly band: Readonly<Record<"from" | "to" | "countedFrom" | "countedTo", Cell>>;
  /** What counts of a share, and how far each value lies from the median, down all rows. */
  counted(share: GatheredShare): Range;
  distances(share: GatheredShare): Range;
  down(column: number): Range;
}

export function gatheredSheet(runs: RunsRead): GatheredSheet {
  const rows = new Rows();
  // As in Rows.each, with heights of their own.
  const head = Object.fromEntries(Object.entries(HEAD).map(([name, height]) => [name, rows.next(height)])) as GatheredSheet["head"];
  const repeated = rows.total;
  const { first, last } = rows.run(runs.rows.length, HEIGHT.row);
  const [median, scatter] = [rows.next(HEIGHT.row), rows.next(HEIGHT.row)];
  const table = rows.total - repeated;
  const leftOut = runs.leftOut.length === 0 ? undefined : { heading: rows.next(HEIGHT.band), ...rows.run(runs.leftOut.length, HEIGHT.line) };
  const kinds = LOSSES.filter((name) => runs.rows.some(({ loss }) => loss?.of === name));
  const without = kinds.length === 0 ? undefined : { heading: rows.next(HEIGHT.band), ...rows.run(kinds.length, HEIGHT.line), kinds };
  const beforeCurves = rows.total;
  const curves = { heading: rows.next(HEIGHT.band), ...rows.run(CHART_ROWS, HEIGHT.line) };
  const blocks = [{ height: table }, { height: beforeCurves - repeated - table }, { height: rows.total - beforeCurves }];
  const begins = [first, leftOut?.heading ?? without?.heading ?? curves.heading, curves.heading];
  const down = (column: number): Range => range(fixed(cell(first, column)), fixed(cell(last, column)));
  const stat = (place: number): Cell => fixed(cell(head.answer, WORK.label + place));
  const box = (column: number): Cell => fixed(cell(head.band, column));
  return {
    runs,
    head,
    first,
    last,
    median,
    scatter,
    leftOut,
    without,
    curves,
    heights: rows.heights,
    breaks: [...new Set(beginPages(pageFor(WIDTHS), repeated, repeated, blocks).map((index) => begins[index] ?? 0))],
    lastRow: rows.heights.length,
    stats: { count: stat(1), median: stat(2), mad: stat(3), apart: stat(4), beyond: stat(5) },
    band: { from: box(AT.trust), to: box(AT.moistureWet), countedFrom: box(WORK.label + 1), countedTo: box(WORK.label + 2) },
    counted: (share) => down(WORK[share].counted),
    distances: (share) => down(WORK[share].apart),
    down,
  };
}
