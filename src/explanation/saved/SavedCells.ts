import { BLANK, CellError, type CellValue } from "../../inputs/CellValue";
import type { ReadSheet, ReadSheets } from "../../sharing/plain/ReadSheets";
import type { Referred } from "../../sharing/plain/reference";
import { isWholeColumns, isWholeRows } from "../../workbook/cellArea";
import { oneCell, type Cells } from "../formula/Cells";

// A long book's calls read a few cells each; what reads whole long columns over and over is left unchecked once so many were read.
const MOST_CELLS_READ = 20_000_000;

/** What the cells of a workbook hold as it was saved, up to a limit on all that is asked for. */
export class SavedCells {
  private left = MOST_CELLS_READ;

  constructor(private readonly sheets: ReadSheets) {}

  /** @param longest how far whole columns reach @returns undefined for what is not known here, or is too much */
  in({ sheet, lastSheet, area }: Referred, longest: number): Cells | undefined {
    const read = sheet === undefined || lastSheet !== undefined ? undefined : this.sheets.sheet(sheet);
    if (read === undefined) return undefined;
    const { row, column, columns } = area;
    const rows = isWholeColumns(area) ? longest : area.rows;
    this.left -= rows * columns;
    if (rows < 1 || this.left < 0 || isWholeRows(area)) return undefined;
    if (rows === 1 && columns === 1) return oneCell(valueAt(read, row, column));
    return Array.from({ length: rows }, (_, down) => Array.from({ length: columns }, (__, across) => valueAt(read, row + down, column + across)));
  }

  /** Rows down to the last cell that holds anything in whole columns; 0 for any other reference. */
  filledRows({ sheet, area }: Referred): number {
    const read = sheet === undefined || !isWholeColumns(area) ? undefined : this.sheets.sheet(sheet);
    if (read === undefined) return 0;
    const last = Array.from({ length: area.columns }, (_, across) => read.filled.get(area.column + across)?.at(-1) ?? -1);
    return Math.max(...last) + 1;
  }
}

function valueAt(sheet: ReadSheet, row: number, column: number): CellValue {
  const cell = sheet.at(row, column);
  if (cell === undefined) return BLANK;
  return cell.error === "" ? (cell.value ?? BLANK) : new CellError(cell.error);
}
