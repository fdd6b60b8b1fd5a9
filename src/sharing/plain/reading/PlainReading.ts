import type { DefinedName } from "../../../workbook/CellsBeside";
import type { CellReading, RangeReading } from "../../../workbook/Workbook";
import type { TablePlace } from "./Surroundings";

export type NameReading = DefinedName;

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
