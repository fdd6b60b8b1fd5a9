import type { CellContent, RangeReading } from "../../workbook/Workbook";
import { sheetWords } from "../words/sheetWords";
import { weighInWords } from "../words/weighInWords";

/** The drying of one sample, weighing by weighing. */
export interface WeighingSeries {
  readonly name: string;
  /** min since the first weigh-in, and g of sample without its vessel. */
  readonly points: readonly { readonly minutes: number; readonly grams: number }[];
}

const { number, elapsed, sample } = weighInWords.columns;
const MASSES: readonly CellContent[] = [sample, weighInWords.correctedSample];
const isMass = (value: CellContent): boolean => MASSES.includes(value);
// Rows from a sample's name down to its column headings: over the empty vessel, with its pan zeros where the sheet has them.
const NAME_ABOVE_HEADINGS = { plain: 2, corrected: 5 };

/**
 * The drying tables on a sheet, found by their column headings wherever they stand, in the order of the sheet: those of
 * run sheets, and any table of a user's own with "Elapsed (min)" and "Sample (g)".
 * Weigh-ins without a time or a mass are left out.
 */
export function readWeighings({ rows }: RangeReading): WeighingSeries[] {
  const values = rows.map((row) => row.map(({ value }) => value));
  return values.flatMap((row, index) => (row.includes(elapsed) && row.some(isMass) ? [seriesUnder(values, index)] : [])).map(named);
}

function seriesUnder(values: readonly (readonly CellContent[])[], headings: number): WeighingSeries {
  const column = (heading: string): number => values[headings]?.indexOf(heading) ?? -1;
  const numbers = column(number);
  const minutes = column(elapsed);
  const grams = values[headings]?.findIndex(isMass) ?? -1;
  const nameAbove = values[headings]?.includes(sample) ? NAME_ABOVE_HEADINGS.plain : NAME_ABOVE_HEADINGS.corrected;
  const below = values.slice(headings + 1);
  // A run sheet numbers every row, filled or not; a table of the user's own ends with its times.
  const counted = numbers === -1 ? minutes : numbers;
  const end = below.findIndex((row) => typeof row[counted] !== "number");
  const points = below.slice(0, end === -1 ? undefined : end).flatMap((row) => {
    const [time, mass] = [row[minutes], row[grams]];
    return typeof time === "number" && typeof mass === "number" ? [{ minutes: time, grams: mass }] : [];
  });
  return { name: String(values[headings - nameAbove]?.[numbers] ?? ""), points };
}

const named = (series: WeighingSeries, index: number): WeighingSeries =>
  series.name === "" ? { ...series, name: sheetWords.sample(index + 1) } : series;
