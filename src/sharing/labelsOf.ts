import { cellArea } from "../workbook/cellArea";
import type { CellReading, RangeReading } from "../workbook/Workbook";

// Over figures of a run sheet that have their words after them in the row, since its first column labels the boxes beside them.
const WORDS_AFTER = /^\d grams$/;

/**
 * What a sheet calls its cells: the words in column A of the row; where a table numbers its rows, the heading above and the number. ""
 * where the sheet says nothing, and for a spill, which brings words of its own. Goes through the sheet once, however many cells are asked for.
 */
export function labelsOf({ rows }: Pick<RangeReading, "rows">): (cell: Pick<CellReading, "cell" | "spill">) => string {
  const labels = new Map<string, string>();
  const headings = new Map<number, string>();
  for (const row of rows) {
    const [first] = row;
    if (first !== undefined && isPrinted(first) && columnOf(first) === 0)
      row.slice(1).forEach((reading, index) => {
        const heading = headings.get(columnOf(reading)) ?? "";
        const after = WORDS_AFTER.test(heading) ? row.slice(index + 2).find((one) => isPrinted(one) && typeof one.value === "string") : undefined;
        if (after !== undefined) labels.set(reading.cell, `${String(after.value)}, ${heading}`);
        else if (typeof first.value === "string") labels.set(reading.cell, first.value);
        else if (heading !== "") labels.set(reading.cell, `${heading}, ${first.shown}`);
      });
    // A row of a file may leave blank cells out.
    for (const reading of row) if (isPrinted(reading) && typeof reading.value === "string") headings.set(columnOf(reading), reading.value);
  }
  return ({ cell, spill }) => (spill === "" ? (labels.get(cell) ?? "") : "");
}

const columnOf = ({ cell }: CellReading): number => cellArea(cell)?.column ?? -1;

const isPrinted = ({ formula, value }: CellReading): boolean => formula === "" && value !== null && value !== "";
