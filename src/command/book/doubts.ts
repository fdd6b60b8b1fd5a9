import { holdsCall } from "../../sharing/findCalls";
import { notGiven } from "../../explanation/saved/notGiven";
import { ON_ITS_WAY } from "../../sharing/formulaCells";
import { circles } from "../../sharing/circles";
import type { CellReading } from "../../workbook/Workbook";
import { Refusal } from "../Refusal";
import { halfFilled, neverCalculated, notLoaded, notWhatFormulasGive, onTheirWay } from "../words/refusals";
import type { Book, BookSheet } from "./Book";
import { calculatedFromThese, type Reader } from "../../explanation/saved/calculatedFromThese";
import { nameOnSheet } from "../../workbook/nameOnSheet";
import { sheetsNeeded } from "../../explanation/saved/sheetsNeeded";

export const NOT_LOADED = "#NAME?";

export type BookInDoubt = Pick<Book, "sheets" | "isCalculatedHere" | "goesRound" | "roundsAsShown" | "colouring" | "names" | "tables">;

/** Why a cell with a formula holds no value to be relied on. */
type Why = "never calculated" | "on its way" | "not loaded" | "half filled" | "from before";

/** Such a cell. */
export interface Doubt {
  readonly sheet: string;
  readonly cell: string;
  readonly why: Why;
  /** The error that it shows. */
  readonly error: string;
  /** Cells that its formula fills and that hold nothing. */
  readonly lacking: readonly string[];
}

/** Cells of other sheets that hold no value to be relied on and that anything on these is calculated from. */
export function doubtsReadFrom(book: BookInDoubt, sheets: readonly BookSheet[]): readonly Doubt[] {
  const needed = sheetsNeeded(book, sheets);
  const others = book.sheets.filter((sheet) => !sheets.includes(sheet) && needed.has(sheet.name.toLowerCase()));
  return calculatedFromThese(book, { sheets: sheets.map(({ name }) => name) }, doubtsOf(book, others));
}

/** The same for one cell, from whatever sheet, itself included. @param anchor the cell with the formula that fills it */
export function doubtsBehind(book: BookInDoubt, sheet: BookSheet, anchor: CellReading): readonly Doubt[] {
  const needed = sheetsNeeded(book, [sheet]);
  const reader: Reader = { sheets: [sheet.name], cell: anchor.cell };
  const found = doubtsOf(book, book.sheets.filter(({ name }) => needed.has(name.toLowerCase()))); // prettier-ignore
  // An error is what an explanation is for.
  const asked = anchor.error === "" ? found : found.filter(({ error }) => error === "");
  return calculatedFromThese(book, reader, asked);
}

/** @throws Refusal naming the cells in doubt for one reason */
export function refuseDoubts({ isCalculatedHere }: Pick<Book, "isCalculatedHere">, doubts: readonly Doubt[]): void {
  for (const why of ["never calculated", "on its way", "not loaded", "half filled", "from before"] as const) {
    const found = doubts.filter((one) => one.why === why);
    const cells = found.map(({ sheet, cell }) => nameOnSheet(sheet, cell));
    if (found.length === 0) continue;
    const lacking = found.flatMap((one) => one.lacking.map((cell) => nameOnSheet(one.sheet, cell)));
    const codes = [...new Set(found.map(({ error }) => error))].join(", ");
    const said = {
      "never calculated": neverCalculated(cells, isCalculatedHere),
      "on its way": onTheirWay(cells, codes, isCalculatedHere),
      "not loaded": notLoaded(cells, isCalculatedHere),
      "half filled": halfFilled(lacking, cells, isCalculatedHere),
      "from before": notWhatFormulasGive(cells),
    };
    throw new Refusal(said[why]);
  }
}

function doubtsOf(book: BookInDoubt, sheets: readonly BookSheet[]): readonly Doubt[] {
  const unfinished = sheets.flatMap(({ name, reading }) =>
    reading.rows.flat().flatMap((cell): Doubt[] => {
      const why = whyUnfinished(cell);
      return why === undefined ? [] : [{ sheet: name, cell: cell.cell, why, error: cell.error, lacking: [] }];
    }),
  );
  return [...unfinished, ...otherThanGiven(book, sheets)];
}

function whyUnfinished({ formula, value, error }: CellReading): Why | undefined {
  if (formula === "") return undefined;
  if (value === null) return "never calculated";
  if (ON_ITS_WAY.includes(error)) return "on its way";
  return error === NOT_LOADED && holdsCall(formula) ? "not loaded" : undefined;
}

/**
 * Cells of these sheets that hold something else than their formulas give, or nothing where they fill other cells. What goes round in a circle gives
 * something else each time, and is shared so by choice alone.
 */
export function otherThanGiven(book: Omit<BookInDoubt, "colouring">, sheets: readonly BookSheet[]): readonly Doubt[] {
  const { isCalculatedHere, goesRound, roundsAsShown, names, tables } = book;
  if (isCalculatedHere || goesRound || roundsAsShown || sheets.length === 0) return [];
  const all = book.sheets.map(({ reading }) => reading);
  const spilling = new Set(book.sheets.flatMap(({ name, cells }) => cells.flatMap(({ spills, cell }) => (spills ? [nameOnSheet(name, cell)] : []))));
  const spills = (sheet: string, cell: string): boolean => spilling.size > 0 && spilling.has(nameOnSheet(sheet, cell));
  const found = notGiven({ sheets: all, names, tables }, { sheets: sheets.map(({ name }) => name), spills, areFilled: true });
  if (found.length === 0) return [];
  const around = new Set(circles(all, { names, tables }).map(({ sheet, cell }) => nameOnSheet(sheet, cell)));
  return found
    .filter(({ sheet, cell }) => !around.has(nameOnSheet(sheet, cell)))
    .map(({ sheet, cell, lacking }) => ({ sheet, cell, why: lacking.length === 0 ? "from before" : "half filled", error: "", lacking }));
}
