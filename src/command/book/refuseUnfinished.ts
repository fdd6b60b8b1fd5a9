import { circles } from "../../sharing/circles";
import { findCalls } from "../../sharing/findCalls";
import { cellArea, covers } from "../../workbook/cellArea";
import type { CellReading } from "../../workbook/Workbook";
import { Refusal } from "../Refusal";
import { inCircle, inError, neverCalculated, notLoaded, onTheirWay, staleBook } from "../words/refusals";
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

/** Cheaper than taking every formula apart: a call of ours has the word in its name, typed or stored. */
export const holdsCall = (formula: string): boolean => /retort/i.test(formula) && findCalls(formula).length > 0;

/** A cell as a message names it, with its sheet. */
export const nameOf = (sheet: string, cell: string): string =>
  /^[A-Za-z_]\w*$/.test(sheet) ? `${sheet}!${cell}` : `'${sheet.replaceAll("'", "''")}'!${cell}`;

/**
 * Nothing is shared or recorded that may not be so: values from before, cells that were never calculated or not to the end, calls of ours
 * in error, and cells calculated in a circle, which show no error.
 * @throws Refusal naming the cells
 */
export function refuseUnfinished(
  { isStale, isRecalculated, goesRound, names, tables }: Pick<Book, "isStale" | "isRecalculated" | "goesRound" | "names" | "tables">,
  sheets: readonly BookSheet[],
  { keepErrors }: Allowed,
): void {
  const all: NamedCell[] = sheets.flatMap(({ name, reading }) =>
    reading.rows.flatMap((row) => row.filter(({ formula }) => formula !== "").map((cell) => ({ name, cell }))),
  );
  const named = (cells: readonly NamedCell[]): string[] => cells.map(({ name, cell }) => nameOf(name, cell.cell));
  const codes = (cells: readonly NamedCell[]): string => [...new Set(cells.map(({ cell }) => cell.error))].join(", ");
  const blank = all.filter(({ cell }) => cell.value === null);
  if (blank.length > 0) throw new Refusal(neverCalculated(named(blank), isRecalculated));
  if (isStale) throw new Refusal(staleBook);
  const underWay = all.filter(({ cell }) => ON_ITS_WAY.includes(cell.error));
  if (underWay.length > 0) throw new Refusal(onTheirWay(named(underWay), codes(underWay), isRecalculated));
  if (keepErrors) return;
  const errors = erroneous(sheets);
  const around =
    goesRound || errors.length > 0
      ? []
      : circles(
          sheets.map(({ reading }) => reading),
          { names, tables },
        );
  if (around.length > 0) throw new Refusal(inCircle(around.map(({ sheet, cell }) => nameOf(sheet, cell))));
  if (errors.length === 0) return;
  const unknown = errors.filter(({ cell }) => cell.error === NOT_LOADED);
  throw new Refusal(unknown.length > 0 ? notLoaded(named(unknown), isRecalculated) : inError(named(errors), codes(errors)));
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
