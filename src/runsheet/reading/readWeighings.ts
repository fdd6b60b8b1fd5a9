import type { CellContent, RangeReading } from "../../workbook/Workbook";
import { sheetWords } from "../words/sheetWords";
import { weighingWords } from "../words/weighingWords";
import { readOlderTables } from "./readOlderTables";
import type { SeriesPoint, Values, WeighingSeries } from "./WeighingSeries";

// The largest sheet has as many samples side by side.
const MOST_SAMPLES = 6;

/**
 * The drying tables on a sheet, found by their headings wherever they stand: those of run sheets, of the ones that earlier versions
 * made, and any table of a user's own with "Elapsed (min)" and "Sample (g)". Weighings without a time or a mass are left out.
 */
export function readWeighings({ rows }: RangeReading): WeighingSeries[] {
  const values = rows.map((row) => row.map(({ value }) => value));
  const sideBySide = values.flatMap((row, index) => (isHeading(row) ? samplesUnder(values, index) : []));
  return sideBySide.length > 0 ? sideBySide : readOlderTables(values).map(named);
}

const isHeading = (row: readonly CellContent[]): boolean => row[0] === weighingWords.drying && row.includes(sheetWords.elapsed);

/** One series a sample: its column of boxes below the heading, less its vessel in the first of them. */
function samplesUnder(values: Values, heading: number): WeighingSeries[] {
  const headings = values[heading] ?? [];
  const [minutes, workings] = [headings.indexOf(sheetWords.elapsed), headings.indexOf(sheetWords.workings.corrected)];
  const [vessels = [], ...below] = values.slice(heading + 1);
  const end = below.findIndex((row) => row[0] === weighingWords.dry);
  const rounds = below.slice(0, end === -1 ? undefined : end);
  return Array.from({ length: MOST_SAMPLES }, (_, index) => index + 1).flatMap((number): WeighingSeries[] => {
    const column = headings.indexOf(sheetWords.sample(number));
    if (column === -1) return [];
    // What counts stands in the workings: the vessel always, a weighing where the balance's zero was taken off it.
    const vessel = vessels[workings + number];
    const points = rounds.flatMap((row) => {
      const counted = row[workings + number];
      const [clock, time, mass] = [row[1], row[minutes], typeof row[column] === "number" && typeof counted === "number" ? counted : row[column]];
      const isWeighed = typeof clock === "number" && typeof time === "number" && typeof mass === "number" && typeof vessel === "number";
      return isWeighed ? [{ minutes: time, grams: mass - vessel }] : [];
    });
    return [{ name: sheetWords.sample(number), points, ...besideWeighings(values.slice(heading), { minutes, workings, number, vessel }) }];
  });
}

interface Place {
  readonly minutes: number;
  /** The column of the workings' labels; those of a sample stand so many columns right of it. */
  readonly workings: number;
  readonly number: number;
  readonly vessel: CellContent | undefined;
}

/** What a run sheet reckons for its chart, found by the labels of its workings; nothing on sheets of earlier versions. */
function besideWeighings(values: Values, { minutes, workings, number, vessel }: Place): Pick<WeighingSeries, "band" | "foretold"> {
  const rowOf = (label: string | undefined): readonly CellContent[] => values.find((row) => label !== undefined && row[workings] === label) ?? [];
  const point = (at: CellContent | undefined, grams: CellContent | undefined): SeriesPoint[] =>
    typeof at === "number" && typeof grams === "number" && typeof vessel === "number" ? [{ minutes: at, grams: grams - vessel }] : [];
  const { band, latest, foretold, latestAt, foretoldAt } = sheetWords.workings;
  const corners = band.map((label) => rowOf(label));
  // Sheets of version 0.2 have the upper edge from its end backwards, with times of its own; later ones have the times of the lower edge.
  const isBackwards = typeof corners[2]?.[minutes] === "number";
  const times = (isBackwards ? corners : [corners[0], corners[1], corners[0], corners[1]]).map((row) => row?.[minutes]);
  const [lowerFrom, lowerTo, ...upper] = corners.map((row, corner) => point(times[corner], row[workings + number]));
  const edges = [[...(lowerFrom ?? []), ...(lowerTo ?? [])], (isBackwards ? upper.reverse() : upper).flat()] as const;
  const own = (label: string): CellContent | undefined => rowOf(label)[workings + number];
  const way = [...point(own(latestAt), own(latest)), ...point(own(foretoldAt), own(foretold))];
  return { ...(isLine(edges[0]) ? { band: edges } : {}), ...(isLine(way) ? { foretold: way } : {}) };
}

/** Two points at two times. */
const isLine = ([first, last]: readonly SeriesPoint[]): boolean => first !== undefined && last !== undefined && last.minutes > first.minutes;

const named = (series: WeighingSeries, index: number): WeighingSeries =>
  series.name === "" ? { ...series, name: sheetWords.sample(index + 1) } : series;
