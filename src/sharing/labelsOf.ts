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
  const headings: string[] = [];
  for (const row of rows) {
    const [first] = row;
    if (first !== undefined && isPrinted(first) && cellArea(first.cell)?.column === 0)
      row.slice(1).forEach(({ cell }, index) => {
        const heading = headings[index + 1] ?? "";
        const after = WORDS_AFTER.test(heading) ? row.slice(index + 2).find((one) => isPrinted(one) && typeof one.value === "string") : undefined;
        if (after !== undefined) labels.set(cell, `${String(after.value)}, ${heading}`);
        else if (typeof first.value === "string") labels.set(cell, first.value);
        else if (heading !== "") labels.set(cell, `${heading}, ${first.shown}`);
      });
    row.forEach((reading, column) => {
      if (isPrinted(reading) && typeof reading.value === "string") headings[column] = reading.value;
    });
  }
  return ({ cell, spill }) => (spill === "" ? (labels.get(cell) ?? "") : "");
}

const isPrinted = ({ formula, value }: CellReading): boolean => formula === "" && value !== null && value !== "";
