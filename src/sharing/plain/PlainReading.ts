import type { RangeReading } from "../../workbook/Workbook";
import type { TablePlace } from "./Surroundings";

/** A defined name of the workbook, or of one of its sheets. */
export interface NameReading {
  readonly name: string;
  /** The sheet that it belongs to; left out for one of the whole workbook. */
  readonly sheet?: string;
  /** "=Run!$B$4" */
  readonly formula: string;
}

/** All that goes into a shared workbook, as it was last calculated. */
export interface PlainReading {
  /** Every sheet that is shared, in the order of its tabs. A formula that refers to any other is shared as its value. */
  readonly sheets: readonly RangeReading[];
  readonly names?: readonly NameReading[];
  readonly tables?: readonly TablePlace[];
}
