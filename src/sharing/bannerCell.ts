import { areaNamed } from "../workbook/areaNamed";
import { cellAt } from "../workbook/cellArea";
import type { CellReading, RangeReading } from "../workbook/Workbook";

// What a reader sees of a sheet without scrolling, on a small screen.
const ROWS_IN_VIEW = 5;
// Widths of a common column in characters, for text that runs on over the blank cells beside it.
const CHARACTERS = 8;

/**
 * Where a copy says what it is: a blank cell in view. Above what stands on the sheet, else in a blank row near the top, else to the right of
 * the first row and of what its last text runs on over. No row is put in: the record, the formulas and the printed pages name cells by their places.
 * @param at where the sheet keeps a place for it, to be used first
 */
export function bannerCell({ range, rows }: Pick<RangeReading, "range" | "rows">): string {
  if (range === "" || rows.length === 0) return "A1";
  const area = areaNamed(range);
  if (area.row > 0) return "A1";
  const isBlank = ({ value, formula }: CellReading): boolean => formula === "" && (value === null || value === "");
  // The first row that is blank from end to end. A formula that shows nothing is none.
  const blank = rows.slice(0, ROWS_IN_VIEW).findIndex((row) => row.every(isBlank));
  if (blank !== -1) return cellAt(area.row + blank, 0);
  const [first = []] = rows;
  const last = first.reduce((so, reading, column) => (isBlank(reading) ? so : column), 0);
  const text = first[last];
  const over = typeof text?.value === "string" ? Math.ceil(text.shown.length / CHARACTERS) : 1;
  return cellAt(area.row, area.column + Math.max(last + over, last + 1));
}
