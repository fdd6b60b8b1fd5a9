import type { CellContent } from "../../workbook/Workbook";

/** The drying of one sample, weighing by weighing. */
export interface WeighingSeries {
  readonly name: string;
  /** min since the first weigh-in, and g of sample without its vessel. */
  readonly points: readonly SeriesPoint[];
  /** Where the next weighing would count as dry: its lower and its upper edge; left out while no limit is in force. */
  readonly band?: readonly [lower: readonly SeriesPoint[], upper: readonly SeriesPoint[]];
  /** From the latest weighing to the end that the curve foretells; left out while nothing is foretold. */
  readonly foretold?: readonly SeriesPoint[];
}

export interface SeriesPoint {
  readonly minutes: number;
  readonly grams: number;
}

/** A sheet, row by row. */
export type Values = readonly (readonly CellContent[])[];
