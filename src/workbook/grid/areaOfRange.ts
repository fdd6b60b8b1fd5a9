import type { IRange } from "@univerjs/core";
import type { CellArea } from "../cellArea";

/** An area as the grid gives it, by its first and last row and column. */
export const areaOfRange = ({ startRow, startColumn, endRow, endColumn }: IRange): CellArea => ({
  row: startRow,
  column: startColumn,
  rows: endRow - startRow + 1,
  columns: endColumn - startColumn + 1,
});
