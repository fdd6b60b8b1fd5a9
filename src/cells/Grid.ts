import { BLANK, type CellValue } from "../inputs/CellValue";
import { decode } from "./decode";

/** One argument as a rectangle of cells, row by row; a single value is one row by one column. */
export interface Grid {
  readonly rows: number;
  readonly columns: number;
  cell(row: number, column: number): CellValue;
  /** Rows up to the last that holds anything but blanks and zeros, at least 1. */
  filledRows(): number;
}

/** A reference such as A:A reaches the add-in with every row of the sheet (Excel specifications and limits). */
export const ROWS_OF_A_SHEET = 1_048_576;

/** The argument as a grid, or undefined when it was left out. */
export function gridOf(raw: unknown): Grid | undefined {
  if (isLeftOut(raw)) return undefined;
  if (!Array.isArray(raw)) return new RowsOfCells([[raw]]);
  // Hosts hand ranges over as rows; a plain list, which the custom functions runtime would also pass on, counts as a column.
  return new RowsOfCells(raw.every(Array.isArray) ? raw : raw.map((row) => (Array.isArray(row) ? row : [row])));
}

/** The one cell that serves a row and column: a single row or column is used again for each. */
export const cellFor = (grid: Grid, row: number, column: number): CellValue => grid.cell(grid.rows === 1 ? 0 : row, grid.columns === 1 ? 0 : column);

/** A class, so that a call makes no function of its own for each argument. */
class RowsOfCells implements Grid {
  readonly rows: number;
  readonly columns: number;

  constructor(private readonly cells: readonly (readonly unknown[])[]) {
    this.rows = cells.length;
    this.columns = cells[0]?.length ?? 0;
  }

  cell(row: number, column: number): CellValue {
    return decode(this.cells[row]?.[column]);
  }

  filledRows(): number {
    let rows = this.rows;
    while (rows > 1 && !(this.cells[rows - 1] ?? []).some(isFilled)) rows--;
    return rows;
  }
}

const isFilled = (raw: unknown): boolean => raw !== 0 && decode(raw) !== BLANK;

/**
 * True for an argument that is not there, and for a plain object that is no rich value: when a client holds older metadata than the code,
 * the host's invocation object arrives in a new optional argument's place.
 */
export const isLeftOut = (raw: unknown): boolean =>
  raw === null ||
  raw === undefined ||
  (typeof raw === "object" && !Array.isArray(raw) && !("type" in raw) && !("basicValue" in raw) && !("code" in raw));
