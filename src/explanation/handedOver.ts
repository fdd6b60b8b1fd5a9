import { BLANK, CellError } from "../inputs/CellValue";
import type { Cells } from "./Cells";

/** Hosts differ: most hand a blank cell over as 0, some as null. */
export type BlankForm = 0 | null;

/** Cells in the form a host hands them to a cell function. */
export const handedOver = (cells: Cells, blankAs: BlankForm): unknown[][] =>
  cells.map((row) => row.map((value) => (value === BLANK ? blankAs : value instanceof CellError ? { type: "Error", code: value.code } : value)));
