import type { CellContent } from "../../workbook/Workbook";
import { olderSheets } from "../words/olderSheets";
import { sheetWords } from "../words/sheetWords";
import type { Values, WeighingSeries } from "./WeighingSeries";

const { number, sample, correctedSample } = olderSheets;
const { elapsed } = sheetWords;
const MASSES: readonly CellContent[] = [sample, correctedSample];
const isMass = (value: CellContent): boolean => MASSES.includes(value);
// Rows from a sample's name down to its column headings: over the empty vessel, with its pan zeros where the sheet has them.
const NAME_ABOVE_HEADINGS = { plain: 2, corrected: 5 };

/** The drying tables of sheets that version 0.2 or an earlier one made, one a sample below the other, and of a user's own. */
export const readOlderTables = (values: Values): WeighingSeries[] =>
  values.flatMap((row, index) => (row.includes(elapsed) && row.some(isMass) ? [seriesUnder(values, index)] : []));

function seriesUnder(values: Values, headings: number): WeighingSeries {
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
