import { CellValueType, type ICellData } from "@univerjs/core";
import { cellData } from "../../../workbook/grid/writing/cellData";
import type { ValueInFile } from "../../../xlsx/parts/cellValue";

/** An error is held as a plain text: the engine takes one for the error, and text that only looks like one is marked by cellData. */
export const heldAs = ({ content, isError }: ValueInFile): ICellData =>
  isError ? { ...cellData(null), v: content, t: CellValueType.STRING } : cellData(content);
