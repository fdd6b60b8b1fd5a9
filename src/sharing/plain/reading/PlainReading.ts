import type { CellReading, RangeReading } from "../../../workbook/Workbook";
import type { TablePlace } from "./Surroundings";

/** A defined name of the workbook, or of one of its sheets. */
export interface NameReading {
  readonly name: string;
  /** The sheet that it belongs to; left out for one of the whole workbook. */
  readonly sheet?: string;
  /** "=Run!$B$4" */
  readonly formula: string;
}

/** The sheets that a workbook loses when others are taken out of it alone. */
export interface SheetsGoing {
  /** Every sheet of the workbook, those too that stay, in the order of the tabs. */
  readonly order: readonly string[];
  readonly isGone: (sheet: string) => boolean;
  /** What a cell of theirs held, by its place from 0. */
  readonly heldAt: (sheet: string, row: number, column: number) => CellReading | undefined;
}

/** All that goes into a shared workbook, as it was last calculated. */
export interface PlainReading {
  /** Every sheet that is shared, in the order of its tabs. A formula that refers to any other is shared as its value. */
  readonly sheets: readonly RangeReading[];
  readonly names?: readonly NameReading[];
  readonly tables?: readonly TablePlace[];
  /** Left out where no sheet goes. */
  readonly going?: SheetsGoing;
}
