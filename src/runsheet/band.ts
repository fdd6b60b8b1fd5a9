import { cellAt } from "../workbook/cellArea";
import type { CellStyle, PlannedCell } from "../workbook/SheetPlan";
import type { Layout } from "./layout";

/** A line of text across the whole width of the sheet, in one look. */
export const band = ({ table }: Layout, row: number, content: string, style: CellStyle): PlannedCell[] =>
  Array.from({ length: table.width }, (_, column) => ({ cell: cellAt(row - 1, column), ...(column === 0 ? { content } : {}), style }));
