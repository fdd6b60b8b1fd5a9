import { BLANK, CellError, type CellValue } from "../../inputs/CellValue";
import type { ReadSheet, ReadSheets } from "../../sharing/plain/reading/ReadSheets";
import type { Referred } from "../../sharing/plain/formula/reference";
import { isWholeColumns, isWholeRows } from "../../workbook/cellArea";
import type { Cells } from "../formula/Cells";

// A long book's calls read a few cells each; what reads whole long columns over and over is left unchecked once so many were read.
const MOST_CELLS_READ = 20_000_000;

/** What the cells of a workbook hold as it was saved, up to a limit on all that is asked for. */
export class SavedCells {
  private left = MOST_CELLS_READ;

  /** @param instead what stands in a cell in place of what was saved there, undefined where that cannot be told; null for a cell that keeps what it has */
  constructor(
    private readonly sheets: ReadSheets,
    private readonly instead: (sheet: string, row: number, column: number) => { readonly value: CellValue | undefined } | null = () => null,
  ) {}

  /** @param longest how far whole columns reach @returns undefined for what is not known here, or is too much */
  in({ sheet, lastSheet, area }: Referred, longest: number): Cells | undefined {
    const read = sheet === undefined || lastSheet !== undefined ? undefined : this.sheets.sheet(sheet);
    if (read === undefined) return undefined;
    const { row, column, columns } = area;
    const rows = isWholeColumns(area) ? longest : area.rows;
    this.left -= rows * columns;
    if (rows < 1 || this.left < 0 || isWholeRows(area)) return undefined;
    const values = Array.from({ length: rows }, (_, down) =>
      Array.from({ length: columns }, (__, across) => this.valueAt(read, row + down, column + across)),
    );
    return values.every((line): line is CellValue[] => line.every((value) => value !== undefined)) ? values : undefined;
  }

  private valueAt(read: ReadSheet, row: number, column: number): CellValue | undefined {
    const other = this.instead(read.name, row, column);
    return other === null ? valueAt(read, row, column) : other.value;
  }

  /** The cells of several sheets, those between the two among them, one sheet's below the other's. */
  onSheets({ sheet, lastSheet, area }: Referred, longest: number): Cells | undefined {
    const names = this.sheets.names.map((name) => name.toLowerCase());
    const [first, last] = [sheet, lastSheet].map((name) => names.indexOf(name?.toLowerCase() ?? ""));
    if (first === undefined || last === undefined || first === -1 || last === -1) return undefined;
    const between = this.sheets.names.slice(Math.min(first, last), Math.max(first, last) + 1);
    const each = between.map((name) => this.in({ sheet: name, area, isWhole: isWholeColumns(area) }, longest));
    return each.every((cells) => cells !== undefined) ? each.flat() : undefined;
  }

  /** Rows down to the last cell that holds anything in whole columns; 0 for any other reference. */
  filledRows({ sheet, area }: Referred): number {
    const read = sheet === undefined || !isWholeColumns(area) ? undefined : this.sheets.sheet(sheet);
    if (read === undefined) return 0;
    const last = Array.from({ length: area.columns }, (_, across) => read.filled.get(area.column + across)?.at(-1) ?? -1);
    return Math.max(...last) + 1;
  }
}

/** Undefined for a formula that was never calculated. */
function valueAt(sheet: ReadSheet, row: number, column: number): CellValue | undefined {
  const cell = sheet.at(row, column);
  if (cell === undefined) return BLANK;
  if (cell.formula !== "" && cell.value === null) return undefined;
  return cell.error === "" ? (cell.value ?? BLANK) : new CellError(cell.error);
}
