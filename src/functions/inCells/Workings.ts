/** The text of each cell of a table, without "=", row by row. */
export type TableInCells = readonly (readonly string[])[];

/** The cells of a sheet of workings, where a form that is too long for one cell, or that needs each row looked at, puts its steps. */
export interface Workings {
  /**
   * Puts a block of cell formulas on the sheet of workings, under one another and side by side, and gives the reference of the block.
   * @param about what they are, printed above them
   * @param cells given the reference of the cell in a row and column of the block, from 0, the text of each, without "="
   */
  block(about: string, rows: number, columns: number, cells: (at: (row: number, column: number) => string) => TableInCells): string;
  /** The cells of an argument that is one column or one row of a known size, or the items of a list in braces; undefined for any other. */
  cellsOf(text: string): readonly string[] | undefined;
}
