import { columnOf, COLUMNS_OF_A_SHEET, ROWS_OF_A_SHEET } from "../../workbook/cellArea";
import { DamagedFile } from "./FileParts";

/** Where the rows and cells of a sheet stand, from 0. Those that do not say their place come after the one before (ECMA-376 Part 1, 18.3.1.73). */
export class CellPlaces {
  row = -1;
  column = -1;
  private isRowSaid = false;

  /** @throws DamagedFile for a row that no sheet has */
  rowBegins(said: string | undefined): number {
    this.isRowSaid = said !== undefined;
    this.row = said === undefined ? this.row + 1 : Number(said) - 1;
    this.column = -1;
    if (!Number.isInteger(this.row) || this.row < 0 || this.row >= ROWS_OF_A_SHEET)
      throw new DamagedFile(`no sheet has a row ${said ?? this.row + 1}`);
    return this.row;
  }

  /** @throws DamagedFile for a cell that no sheet has, or that says another row than the one it stands in */
  cellBegins(said: string | undefined): void {
    if (said === undefined) this.column++;
    else {
      const [, letters, number] = CELL.exec(said) ?? [];
      if (letters === undefined || (this.isRowSaid && Number(number) - 1 !== this.row))
        throw new DamagedFile(`a cell of row ${this.row + 1} is called ${said}`);
      if (!this.isRowSaid) this.row = Number(number) - 1;
      this.column = columnOf(letters);
    }
    if (this.column >= COLUMNS_OF_A_SHEET || this.row >= ROWS_OF_A_SHEET)
      throw new DamagedFile(`no sheet has a cell ${said ?? "so far to the right"}`);
  }
}

const CELL = /^([A-Z]{1,3})([1-9]\d{0,6})$/i;
