import { cellArea } from "../workbook/cellArea";
import type { CellReading, RangeReading } from "../workbook/Workbook";

/** What is printed on a sheet: words and numbers that no formula gives. */
interface Printed {
  /** What stands in column A, by row. */
  readonly begins: ReadonlyMap<number, CellReading>;
  /** Words in each column, from top to bottom. */
  readonly words: ReadonlyMap<number, readonly { readonly row: number; readonly text: string }[]>;
}

/**
 * What a sheet calls one of its cells: the words left of it in its row; where a table numbers its rows, the heading above
 * and the number. "" where the sheet says nothing, and for a spill, which brings words of its own.
 */
export function labelOf({ cell, spill }: CellReading, { rows }: Pick<RangeReading, "rows">): string {
  const place = cellArea(cell);
  if (spill !== "" || place === undefined || place.column === 0) return "";
  const { begins, words } = printedOn(rows);
  const first = begins.get(place.row);
  if (first === undefined || typeof first.value === "string") return String(first?.value ?? "");
  const heading = lastAbove(words.get(place.column) ?? [], place.row);
  return heading === "" ? "" : `${heading}, ${first.shown}`;
}

// A long sheet is gone through once and not once for each of its cells.
const known = new WeakMap<RangeReading["rows"], Printed>();

function printedOn(rows: RangeReading["rows"]): Printed {
  const before = known.get(rows);
  if (before !== undefined) return before;
  const [begins, words] = [new Map<number, CellReading>(), new Map<number, { row: number; text: string }[]>()];
  for (const reading of rows.flat()) {
    const { formula, value } = reading;
    if (formula !== "" || value === null || value === "") continue;
    const { row = -1, column = -1 } = cellArea(reading.cell) ?? {};
    if (column === 0) begins.set(row, reading);
    if (typeof value !== "string") continue;
    const inColumn = words.get(column) ?? [];
    words.set(column, inColumn);
    inColumn.push({ row, text: value });
  }
  const printed = { begins, words };
  known.set(rows, printed);
  return printed;
}

function lastAbove(words: readonly { readonly row: number; readonly text: string }[], row: number): string {
  let [from, to] = [0, words.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((words[middle]?.row ?? row) < row) from = middle + 1;
    else to = middle;
  }
  return words[from - 1]?.text ?? "";
}
