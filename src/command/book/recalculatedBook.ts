import { holdsCall } from "../../sharing/findCalls";
import { plainNumber } from "../../problems/quoted";
import { cellArea, cellAt } from "../../workbook/cellArea";
import type { CellReading } from "../../workbook/Workbook";
import { Refusal } from "../Refusal";
import { daysInDoubt, neverCalculatedHere, notRecalculated, type AsSaved } from "../words/refusals";
import type { Book, BookSheet } from "./Book";
import type { Calculated } from "./recalculate";
import { isSame, refuseDoubtful } from "./refuseDoubtful";
import { nameOf } from "./refuseUnfinished";

export interface RecalculatedHere {
  /** True where the file counts days from 1904. */
  readonly from1904: boolean;
  readonly asSaved: AsSaved;
}

/**
 * The book with the values that its formulas have here in place of those in the file. What cannot be calculated here, such as what reads another
 * workbook, keeps the value in the file, and so does what comes to the same.
 * @throws Refusal where a formula without calls of ours gives an error here and a value in the file, for a formula that cannot be calculated here and
 * has no value or one that is from before, and where the file holds another value and nothing changed that it is calculated from
 */
export function recalculatedBook(book: Book, calculated: Calculated, { from1904, asSaved }: RecalculatedHere): Book {
  const [lost, without]: [string[], string[]] = [[], []];
  const sheets = book.sheets.map((sheet) =>
    recalculatedSheet(sheet, calculated.get(sheet.name) ?? new Map<string, CellReading>(), { lost, without }),
  );
  if (without.length > 0) throw new Refusal(neverCalculatedHere(without, asSaved));
  if (lost.length > 0) throw new Refusal(notRecalculated(lost, asSaved));
  if (from1904) refuseDoubtfulDays(book, sheets, asSaved);
  refuseDoubtful(book, sheets, { asSaved, wasCalculated: (sheet, cell) => isCalculatedHere(calculated.get(sheet)?.get(cell)) });
  return { ...book, sheets, isStale: false, isCalculatedHere: true };
}

/**
 * In a file that counts days from 1904, numbers that do not look like days may be days all the same, and are then calculated here as days from 1900.
 * Where the file holds another number, or none, that cannot be told.
 */
function refuseDoubtfulDays(before: Book, now: readonly BookSheet[], asSaved: AsSaved): void {
  const doubtful = now.flatMap(({ name, reading }, place) => {
    const was = new Map(before.sheets[place]?.reading.rows.flat().map((one) => [one.cell, one.value]));
    const reads = reading.rows.flat().filter(({ formula, value }) => formula !== "" && typeof value === "number" && !holdsCall(formula));
    return reads.filter(({ cell, value }) => !isNear(was.get(cell), value)).map(({ cell }) => nameOf(name, cell));
  });
  if (doubtful.length > 0) throw new Refusal(daysInDoubt(doubtful, asSaved));
}

// The two counts are far further apart.
const isNear = (one: unknown, other: unknown): boolean =>
  typeof one === "number" && typeof other === "number" && Math.abs(one - other) <= 1e-6 * Math.max(1, Math.abs(one));

/** What is kept as a value has no formula here. */
const isCalculatedHere = (now: CellReading | undefined): boolean => now?.formula !== undefined && now.formula !== "";

function recalculatedSheet(
  sheet: BookSheet,
  here: ReadonlyMap<string, CellReading>,
  { lost, without }: { readonly lost: string[]; readonly without: string[] },
): BookSheet {
  const filled = new Set(sheet.reading.rows.flat().flatMap(({ spill }) => (spill === "" ? [] : cellsIn(spill))));
  const rows = sheet.reading.rows.map((row) =>
    row.map((reading): CellReading => {
      const now = here.get(reading.cell);
      const isCalculated = reading.formula === "" ? filled.has(reading.cell) : isCalculatedHere(now);
      if (!isCalculated && reading.formula !== "" && reading.value === null) without.push(nameOf(sheet.name, reading.cell));
      if (now === undefined || !isCalculated) return reading;
      const { error } = now;
      if (error !== "" && error !== reading.error && reading.value !== null && !holdsCall(reading.formula) && !filled.has(reading.cell))
        lost.push(nameOf(sheet.name, reading.cell));
      // A formula that gives a blank gives an empty text, as files have it.
      const value = now.value ?? "";
      const calculated = { ...reading, value, error, shown: typeof value === "number" ? plainNumber(value) : String(value) };
      return !holdsCall(reading.formula) && isSame(reading, calculated) ? reading : calculated;
    }),
  );
  return { ...sheet, reading: { ...sheet.reading, rows } };
}

function cellsIn(range: string): string[] {
  const { row = 0, column = 0, rows = 0, columns = 0 } = cellArea(range) ?? {};
  return Array.from({ length: rows * columns }, (_, index) => cellAt(row + Math.floor(index / columns), column + (index % columns)));
}
