import { cellAt } from "../../workbook/cellArea";
import type { CellInFile } from "../../xlsx/package/readCells";

const ROWS_LOOKED_AT = 3;
// A column of usual width, with room to spare: text that is cut off says less than text further right.
const CHARACTERS_PER_COLUMN = 8;

/**
 * A blank cell near the top of a sheet for a line of text, in which nothing to its right cuts it off, so that no cell has to move: column A of a
 * blank row, else behind the last words of a row, as long as that is within the columns in use.
 */
export function bannerCell(cells: readonly CellInFile[]): string {
  const used = cells.filter(({ value, formulaKind }) => value !== null || formulaKind !== "none");
  const lastColumn = used.reduce((last, { column }) => Math.max(last, column), 0);
  const free = Array.from({ length: ROWS_LOOKED_AT }, (_, row) => firstFree(used.filter((cell) => cell.row === row)));
  const blank = free.indexOf(0);
  if (blank !== -1) return cellAt(blank, 0);
  const within = free.findIndex((column) => column < lastColumn);
  return within === -1 ? cellAt(0, Math.max(free[0] ?? 0, lastColumn + 1)) : cellAt(within, free[within] ?? 0);
}

/** The column behind everything in a row, texts counted at their length. */
const firstFree = (row: readonly CellInFile[]): number =>
  row.reduce(
    (free, { column, value }) =>
      Math.max(free, column + Math.max(1, Math.ceil((typeof value === "string" ? value.length : 0) / CHARACTERS_PER_COLUMN))),
    0,
  );
