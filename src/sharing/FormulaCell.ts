import type { CellInTheWay } from "../problems/sharingProblems";
import type { FrozenArea } from "../workbook/Workbook";
import type { RetortCall } from "./findCalls";

/** One cell with a cell formula, and the values that its formula fills. */
export interface FormulaCell {
  readonly cell: string;
  /** What the sheet calls it: "Moisture, wet basis"; "" where it says nothing. */
  readonly label: string;
  /** As the workbook holds it, beginning with "=". */
  readonly formula: string;
  readonly calls: readonly RetortCall[];
  /** The cell, or the whole area of its spill, with the values shown; an empty text counts as a blank cell. */
  readonly area: FrozenArea;
  /** Errors shown by the cell or by a cell that its spill fills. */
  readonly errors: readonly CellInTheWay[];
}
