import { COLUMNS } from "./columns";
import type { Layout, SampleRows } from "./layout";
import type { HeatingRecord, Weighed } from "./quantities";

/** The cells of one sample's block, as cell formulas refer to them. */
export interface SampleCells {
  readonly rows: SampleRows;
  /** The empty vessel, corrected for drift where the sheet does that. */
  readonly vessel: string;
  /** The first weigh-in is the moist weighing. */
  readonly moist: string;
  readonly dry: string;
  /** Letter of the column of weighings with the vessel, corrected for drift where the sheet does that. */
  readonly gross: string;
  /** A column of the weigh-in table from the first row to the given one, or to its end. */
  stretch(column: string, to?: number): string;
  /** "" where the run does not go that far. */
  heating(record: HeatingRecord): string;
}

/** @param sample from 1 */
export function sampleCells(layout: Layout, sample: number): SampleCells {
  const rows = layout.samples[sample - 1] as SampleRows;
  const { letters } = layout.table;
  const gross = letters.corrected ?? letters.loaded;
  const at = (what: Weighed | HeatingRecord, row: number): number => rows.zeros.get(what as Weighed)?.corrected ?? row;
  return {
    rows,
    vessel: `$${COLUMNS.value}$${at("vessel", rows.vessel)}`,
    moist: `${gross}${rows.first}`,
    dry: `${COLUMNS.value}${rows.dry}`,
    gross,
    stretch: (column, to = rows.last) => `${column}$${rows.first}:${column}${to}`,
    heating: (record) => {
      const row = rows.heating.get(record);
      return row === undefined ? "" : `${COLUMNS.value}${at(record, row)}`;
    },
  };
}
