import { circles, type CellInCircle } from "../../sharing/circles";
import { holdsCall } from "../../sharing/findCalls";
import { ON_ITS_WAY } from "../../sharing/formulaCells";
import { cellArea, covers } from "../../workbook/cellArea";
import type { CellReading } from "../../workbook/Workbook";
import { Refusal } from "../Refusal";
import { inCircle, inError, neverCalculated, notLoaded, onTheirWay, staleBook } from "../words/refusals";
import type { Book, BookSheet } from "./Book";
import { refuseUnchecked } from "./refuseUnchecked";
import { calculatedFromThese } from "../../explanation/saved/calculatedFromThese";
import { nameOnSheet } from "../../workbook/nameOnSheet";
import { foundAmong, foundReadFrom, NOT_LOADED, refuseDoubts, type BookInDoubt } from "./doubts";

/** A cell and its sheet. */
interface NamedCell {
  readonly name: string;
  readonly cell: CellReading;
}

interface Allowed {
  readonly keepErrors: boolean;
  /** True where somebody said to take what the file holds, as far as nothing shows it to be wrong. */
  readonly keepUnchecked?: boolean;
}

type BookToShare = BookInDoubt & Pick<Book, "isStale" | "content" | "file" | "uncheckedHere">;

/**
 * Nothing is shared or recorded that may not be so: values from before, cells that were never calculated or not to the end, calls of ours
 * in error, cells calculated in a circle, which show no error, and cells that hold something else than their formulas give, or of which that cannot be
 * told, on these sheets and wherever they are calculated from.
 * @throws Refusal naming the cells
 */
export async function refuseUnfinished(
  book: BookToShare,
  sheets: readonly BookSheet[],
  { keepErrors, keepUnchecked = keepErrors }: Allowed,
): Promise<void> {
  const all: NamedCell[] = sheets.flatMap(({ name, reading }) =>
    reading.rows.flatMap((row) => row.filter(({ formula }) => formula !== "").map((cell) => ({ name, cell }))),
  );
  const named = (cells: readonly NamedCell[]): string[] => cells.map(({ name, cell }) => nameOnSheet(name, cell.cell));
  const codes = (cells: readonly NamedCell[]): string => [...new Set(cells.map(({ cell }) => cell.error))].join(", ");
  const blank = all.filter(({ cell }) => cell.value === null);
  if (blank.length > 0) throw new Refusal(neverCalculated(named(blank), book.isCalculatedHere));
  if (book.isStale) throw new Refusal(staleBook);
  const underWay = all.filter(({ cell }) => ON_ITS_WAY.includes(cell.error));
  if (underWay.length > 0) throw new Refusal(onTheirWay(named(underWay), codes(underWay), book.isCalculatedHere));
  const errors = keepErrors ? [] : erroneous(sheets);
  if (!keepErrors && !book.goesRound && errors.length === 0) {
    const around = circlesAmong(sheets, book);
    if (around.length > 0) throw new Refusal(inCircle(around.map(({ sheet, cell }) => nameOnSheet(sheet, cell))));
  }
  const unknown = errors.filter(({ cell }) => cell.error === NOT_LOADED);
  if (errors.length > 0)
    throw new Refusal(unknown.length > 0 ? notLoaded(named(unknown), book.isCalculatedHere) : inError(named(errors), codes(errors)));
  const own = foundAmong(book, sheets, !keepUnchecked);
  refuseDoubts(book, own.doubts);
  const others = foundReadFrom(book, sheets);
  refuseDoubts(book, others.doubts);
  if (keepUnchecked) return;
  const kept = calculatedFromThese(book, { sheets: sheets.map(({ name }) => name) }, book.uncheckedHere ?? []);
  await refuseUnchecked(book, [...own.unchecked, ...others.unchecked, ...kept]);
}

const circlesAmong = (sheets: readonly BookSheet[], { names, tables }: Pick<Book, "names" | "tables">): readonly CellInCircle[] =>
  circles(
    sheets.map(({ reading }) => reading),
    { names, tables },
  );

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
