import { plainNumber } from "../../problems/quoted";
import { cellArea, cellAt } from "../../workbook/cellArea";
import type { CellReading } from "../../workbook/Workbook";
import { Refusal } from "../Refusal";
import { notRecalculated } from "../words/refusals";
import type { Book, BookSheet } from "./Book";
import type { Calculated } from "./recalculate";
import { holdsCall, nameOf } from "./refuseUnfinished";

/**
 * The book with the values that its formulas have here in place of those in the file. What cannot be calculated here, such as what reads another
 * workbook, keeps the value in the file.
 * @throws Refusal where a formula without calls of ours gives an error here and a value in the file
 */
export function recalculatedBook(book: Book, calculated: Calculated): Book {
  const lost: string[] = [];
  const sheets = book.sheets.map((sheet) => recalculatedSheet(sheet, calculated.get(sheet.name) ?? new Map<string, CellReading>(), lost));
  if (lost.length > 0) throw new Refusal(notRecalculated(lost));
  return { ...book, sheets, isStale: false };
}

function recalculatedSheet(sheet: BookSheet, here: ReadonlyMap<string, CellReading>, lost: string[]): BookSheet {
  const filled = new Set(sheet.reading.rows.flat().flatMap(({ spill }) => (spill === "" ? [] : cellsIn(spill))));
  const rows = sheet.reading.rows.map((row) =>
    row.map((reading): CellReading => {
      const now = here.get(reading.cell);
      const isCalculated = reading.formula === "" ? filled.has(reading.cell) : now?.formula !== undefined && now.formula !== "";
      if (now === undefined || !isCalculated) return reading;
      const { error } = now;
      if (error !== "" && error !== reading.error && reading.value !== null && !holdsCall(reading.formula) && !filled.has(reading.cell))
        lost.push(nameOf(sheet.name, reading.cell));
      // A formula that gives a blank gives an empty text, as files have it.
      const value = now.value ?? "";
      return { ...reading, value, error, shown: typeof value === "number" ? plainNumber(value) : String(value) };
    }),
  );
  return { ...sheet, reading: { ...sheet.reading, rows } };
}

function cellsIn(range: string): string[] {
  const { row = 0, column = 0, rows = 0, columns = 0 } = cellArea(range) ?? {};
  return Array.from({ length: rows * columns }, (_, index) => cellAt(row + Math.floor(index / columns), column + (index % columns)));
}
