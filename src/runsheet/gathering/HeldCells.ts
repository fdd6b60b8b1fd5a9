import { cellArea } from "../../workbook/cellArea";
import type { CellReading, RangeReading } from "../../workbook/Workbook";
import { cell, elsewhere, type Cell } from "../expressions/Expression";

/** The cells of a sheet, found by what they hold. */
export class HeldCells {
  private readonly cells: readonly { readonly row: number; readonly column: number; readonly reading: CellReading }[];

  constructor(private readonly reading: RangeReading) {
    this.cells = reading.rows.flat().flatMap((one) => {
      const area = one.value === null ? undefined : cellArea(one.cell);
      return area === undefined ? [] : [{ row: area.row + 1, column: area.column, reading: one }];
    });
  }

  /** The first row, from 1, from `after` on, whose cell in a column holds this text. */
  rowWith(text: string, column: number, after = 0): number | undefined {
    return this.cells.find((one) => one.column === column && one.row > after && one.reading.value === text)?.row;
  }

  /** The column, from 0, in which a row holds this text. */
  columnWith(text: string, row: number): number | undefined {
    return this.cells.find((one) => one.row === row && one.reading.value === text)?.column;
  }

  /** What a cell shows, "" for none. */
  textAt({ row, column }: Cell): string {
    return this.cells.find((one) => one.row === row && one.column === column)?.reading.shown ?? "";
  }

  /** Whether any cell holds this text. */
  holds(text: string): boolean {
    return this.cells.some(({ reading }) => reading.value === text);
  }

  /** Whether a cell holds a cell formula. */
  isCalculated({ row, column }: Cell): boolean {
    return this.cells.some((one) => one.row === row && one.column === column && one.reading.formula !== "");
  }

  /** The last row of those from `first` on, one below the other, that hold anything in a column. */
  lastFilled(first: number, column: number): number {
    let last = first - 1;
    while (this.cells.some((one) => one.row === last + 1 && one.column === column && one.reading.value !== "")) last++;
    return last;
  }

  /** A reference to one of its cells from another sheet. */
  at(row: number, column: number): Cell {
    return elsewhere(this.reading.sheet, cell(row, column));
  }
}
