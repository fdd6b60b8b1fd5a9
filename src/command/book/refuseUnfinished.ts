import { notGiven } from "../../explanation/saved/notGiven";
import { circles, type CellInCircle } from "../../sharing/circles";
import { holdsCall } from "../../sharing/findCalls";
import { cellArea, covers } from "../../workbook/cellArea";
import { quotedSheet } from "../../workbook/quotedSheet";
import type { CellReading } from "../../workbook/Workbook";
import { Refusal } from "../Refusal";
import { inCircle, inError, neverCalculated, notLoaded, notWhatFormulasGive, onTheirWay, staleBook } from "../words/refusals";
import type { Book, BookSheet } from "./Book";

// What programs show while a value is on its way.
const ON_ITS_WAY: readonly string[] = ["#BUSY!", "#CALC!", "#GETTING_DATA"];
const NOT_LOADED = "#NAME?";

/** A cell and its sheet. */
interface NamedCell {
  readonly name: string;
  readonly cell: CellReading;
}

interface Allowed {
  readonly keepErrors: boolean;
}

/** A cell as a message names it, with its sheet. */
export const nameOf = (sheet: string, cell: string): string => (/^[A-Za-z_]\w*$/.test(sheet) ? `${sheet}!${cell}` : `${quotedSheet(sheet)}!${cell}`);

/**
 * Nothing is shared or recorded that may not be so: values from before, cells that were never calculated or not to the end, calls of ours
 * in error, cells calculated in a circle, which show no error, and cells that hold something else than their calls of ours give.
 * @throws Refusal naming the cells
 */
export function refuseUnfinished(
  book: Pick<Book, "sheets" | "isStale" | "isCalculatedHere" | "goesRound" | "names" | "tables">,
  sheets: readonly BookSheet[],
  { keepErrors }: Allowed,
): void {
  const all: NamedCell[] = sheets.flatMap(({ name, reading }) =>
    reading.rows.flatMap((row) => row.filter(({ formula }) => formula !== "").map((cell) => ({ name, cell }))),
  );
  const named = (cells: readonly NamedCell[]): string[] => cells.map(({ name, cell }) => nameOf(name, cell.cell));
  const codes = (cells: readonly NamedCell[]): string => [...new Set(cells.map(({ cell }) => cell.error))].join(", ");
  const blank = all.filter(({ cell }) => cell.value === null);
  if (blank.length > 0) throw new Refusal(neverCalculated(named(blank), book.isCalculatedHere));
  if (book.isStale) throw new Refusal(staleBook);
  const underWay = all.filter(({ cell }) => ON_ITS_WAY.includes(cell.error));
  if (underWay.length > 0) throw new Refusal(onTheirWay(named(underWay), codes(underWay), book.isCalculatedHere));
  const errors = keepErrors ? [] : erroneous(sheets);
  if (!keepErrors && !book.goesRound && errors.length === 0) {
    const around = circlesAmong(sheets, book);
    if (around.length > 0) throw new Refusal(inCircle(around.map(({ sheet, cell }) => nameOf(sheet, cell))));
  }
  const unknown = errors.filter(({ cell }) => cell.error === NOT_LOADED);
  if (errors.length > 0)
    throw new Refusal(unknown.length > 0 ? notLoaded(named(unknown), book.isCalculatedHere) : inError(named(errors), codes(errors)));
  refuseNotGiven(book, sheets);
}

const circlesAmong = (sheets: readonly BookSheet[], { names, tables }: Pick<Book, "names" | "tables">): readonly CellInCircle[] =>
  circles(
    sheets.map(({ reading }) => reading),
    { names, tables },
  );

/** What goes round in a circle gives something else each time, and is shared so by choice alone. */
function refuseNotGiven(book: Pick<Book, "sheets" | "isCalculatedHere" | "goesRound" | "names" | "tables">, sheets: readonly BookSheet[]): void {
  if (book.isCalculatedHere || book.goesRound) return;
  const { names, tables } = book;
  const all = book.sheets.map(({ reading }) => reading);
  const found = notGiven({ sheets: all, names, tables }, sheets.map(({ name }) => name)); // prettier-ignore
  if (found.length === 0) return;
  const around = new Set(circlesAmong(book.sheets, book).map(({ sheet, cell }) => nameOf(sheet, cell)));
  const cells = found.map(({ sheet, cell }) => nameOf(sheet, cell)).filter((cell) => !around.has(cell));
  if (cells.length > 0) throw new Refusal(notWhatFormulasGive(cells));
}

/** Cells in error that hold a call of ours, or are filled by one. */
export function erroneous(sheets: readonly BookSheet[]): readonly NamedCell[] {
  return sheets.flatMap(({ name, reading }) => {
    const cells = reading.rows.flat();
    const inError = cells.filter(({ error }) => error !== "");
    if (inError.length === 0) return [];
    const filled = cells.filter(({ spill, formula }) => spill !== "" && holdsCall(formula)).map(({ spill }) => spill);
    return inError.filter(({ formula, cell }) => holdsCall(formula) || filled.some((area) => isWithin(cell, area))).map((cell) => ({ name, cell }));
  });
}

function isWithin(cell: string, range: string): boolean {
  const [one, area] = [cellArea(cell), cellArea(range)];
  return one !== undefined && area !== undefined && covers(area, one.row, one.column);
}
