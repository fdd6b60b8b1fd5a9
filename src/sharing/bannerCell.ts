import { areaNamed } from "../workbook/areaNamed";
import { cellArea, cellAt } from "../workbook/cellArea";
import type { CellReading, RangeReading } from "../workbook/Workbook";

// What a reader sees of a sheet without scrolling, on a small screen.
const ROWS_IN_VIEW = 5;
// Widths of a common column in characters, for text that runs on over the blank cells beside it.
const CHARACTERS = 8;
// A very long text would push it out of view.
const MOST_COLUMNS = 6;

// Begins the text by which a run sheet is read again.
const RUN_SHEET = "Retort run sheet ";

/**
 * Where a copy says what it is: a blank cell in view. Above what stands on the sheet, else in a blank row near the top, else to the right of
 * the first row and of what its last text runs on over. No row is put in: the record, the formulas and the printed pages name cells by their places.
 * @param isStill true for a copy that does not calculate: on a run sheet it takes the cell that says what to weigh next, which nobody weighs there
 */
export function bannerCell({ range, rows }: Pick<RangeReading, "range" | "rows">, isStill = false): string {
  if (range === "" || rows.length === 0) return "A1";
  const area = areaNamed(range);
  if (area.row > 0) return "A1";
  const isBlank = ({ value, formula }: CellReading): boolean => formula === "" && (value === null || value === "");
  const [first = []] = rows;
  const next = first.find(({ formula }) => formula !== "");
  const isRun = first.some(({ formula, value }) => formula === "" && typeof value === "string" && value.startsWith(RUN_SHEET));
  if (isStill && isRun && next !== undefined) return next.cell;
  const spills = rows.flat().flatMap(({ spill }) => cellArea(spill) ?? []);
  const isFilled = (row: number): boolean => spills.some((spill) => row >= spill.row && row < spill.row + spill.rows);
  // The first row that is blank from end to end. A formula that shows nothing is none, nor is a row that a spill fills with nothing.
  const blank = rows.slice(0, ROWS_IN_VIEW).findIndex((row, down) => row.every(isBlank) && !isFilled(area.row + down));
  if (blank !== -1) return cellAt(area.row + blank, 0);
  const last = first.reduce((so, reading, column) => (isBlank(reading) ? so : column), 0);
  const text = first[last];
  const over = typeof text?.value === "string" ? Math.min(MOST_COLUMNS, Math.ceil(text.shown.length / CHARACTERS)) : 1;
  const { column } = areaNamed(text?.cell ?? "A1");
  return cellAt(area.row, column + Math.max(over, 1));
}
