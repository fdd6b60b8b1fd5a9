import { holdsCall } from "../../sharing/findCalls";
import { lookedAt } from "../../explanation/saved/notGiven";
import { ON_ITS_WAY } from "../../sharing/formulaCells";
import { circles } from "../../sharing/circles";
import type { CellReading } from "../../workbook/Workbook";
import { Refusal } from "../Refusal";
import { halfFilled, neverCalculated, notLoaded, notWhatFormulasGive, onTheirWay } from "../words/refusals";
import type { Book, BookSheet } from "./Book";
import { calculatedFromThese, type Place, type Reader } from "../../explanation/saved/calculatedFromThese";
import { nameOnSheet } from "../../workbook/nameOnSheet";
import type { WhatIfTable } from "../../explanation/saved/whatIfTables";
import { cellArea } from "../../workbook/cellArea";
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

/** What was found of cells whose values are not to be relied on. */
export interface Found {
  readonly doubts: readonly Doubt[];
  /** Of which it cannot be told here whether their formulas give them. */
  readonly unchecked: readonly Place[];
}

/** Cells of other sheets that hold no value to be relied on and that anything on these is calculated from. */
export function foundReadFrom(book: BookInDoubt, sheets: readonly BookSheet[]): Found {
  const needed = sheetsNeeded(book, sheets);
  const others = book.sheets.filter((sheet) => !sheets.includes(sheet) && needed.has(sheet.name.toLowerCase()));
  const reader: Reader = { sheets: sheets.map(({ name }) => name) };
  const { doubts, unchecked } = foundAmong(book, others);
  return {
    doubts: calculatedFromThese(book, reader, [...unfinishedOn(others), ...doubts]),
    unchecked: calculatedFromThese(book, reader, unchecked),
  };
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
      "from before": notWhatFormulasGive(cells, isCalculatedHere),
    };
    throw new Refusal(said[why]);
  }
}

const doubtsOf = (book: BookInDoubt, sheets: readonly BookSheet[]): readonly Doubt[] => [...unfinishedOn(sheets), ...otherThanGiven(book, sheets)];

const unfinishedOn = (sheets: readonly BookSheet[]): readonly Doubt[] =>
  sheets.flatMap(({ name, reading }) =>
    reading.rows.flat().flatMap((cell): Doubt[] => {
      const why = whyUnfinished(cell);
      return why === undefined ? [] : [{ sheet: name, cell: cell.cell, why, error: cell.error, lacking: [] }];
    }),
  );

function whyUnfinished({ formula, value, error }: CellReading): Why | undefined {
  if (formula === "") return undefined;
  if (value === null) return "never calculated";
  if (ON_ITS_WAY.includes(error)) return "on its way";
  return error === NOT_LOADED && holdsCall(formula) ? "not loaded" : undefined;
}

/** Cells of these sheets that hold something else than their formulas give, or nothing where they fill other cells. */
export const otherThanGiven = (book: Omit<BookInDoubt, "colouring">, sheets: readonly BookSheet[]): readonly Doubt[] =>
  foundAmong(book, sheets, false).doubts;

/** The same, and the cells of which it cannot be told. What goes round in a circle gives something else each time, and is shared so by choice alone. */
export function foundAmong(book: Omit<BookInDoubt, "colouring">, sheets: readonly BookSheet[], areUncheckedAsked = true): Found {
  const { isCalculatedHere, goesRound, roundsAsShown, names, tables } = book;
  const whatIf = book.sheets.flatMap(({ name, cells }) => cells.flatMap((one) => whatIfTableAt(name, one) ?? []));
  const isNothingAsked = sheets.length === 0 || (isCalculatedHere && whatIf.length === 0);
  if (isNothingAsked || roundsAsShown) return { doubts: [], unchecked: [] };
  const all = book.sheets.map(({ reading }) => reading);
  const cellsOf = (isSuch: (cell: BookSheet["cells"][number]) => boolean): ReadonlySet<string> =>
    new Set(book.sheets.flatMap(({ name, cells }) => cells.flatMap((one) => (isSuch(one) ? [nameOnSheet(name, one.cell)] : []))));
  const isAmong = (among: ReadonlySet<string>) => (sheet: string, cell: string) => among.size > 0 && among.has(nameOnSheet(sheet, cell));
  const hidden = new Set(
    book.sheets.flatMap(({ name, cells }) => cells.flatMap(({ isHidden, row }) => (isHidden === true ? [`${name}!${row}`] : []))),
  );
  const found = lookedAt(
    { sheets: all, names, tables },
    {
      sheets: sheets.map(({ name }) => name),
      spills: isAmong(cellsOf(({ spills }) => spills)),
      areOverArrays: isAmong(cellsOf(({ formulaKind }) => formulaKind === "array")),
      whatIf,
      // The values of what-if tables stay as the file has them.
      areTablesAlone: isCalculatedHere,
      isHidden: (sheet, row) => hidden.size > 0 && hidden.has(`${sheet}!${row}`),
      areFilled: true,
    },
    areUncheckedAsked,
  );
  if (found.notGiven.length + found.unchecked.length === 0) return { doubts: [], unchecked: [] };
  const around = new Set(circles(all, { names, tables }).map(({ sheet, cell }) => nameOnSheet(sheet, cell)));
  // Until circles have settled, what is calculated from them lags behind.
  if (goesRound && around.size > 0) return { doubts: [], unchecked: [] };
  const isStraight = ({ sheet, cell }: Place): boolean => !around.has(nameOnSheet(sheet, cell));
  return {
    doubts: found.notGiven
      .filter(isStraight)
      .map(({ sheet, cell, lacking }) => ({ sheet, cell, why: lacking.length === 0 ? "from before" : "half filled", error: "", lacking })),
    unchecked: found.unchecked.filter(isStraight),
  };
}

function whatIfTableAt(sheet: string, { fills, inputs }: BookSheet["cells"][number]): WhatIfTable | undefined {
  const area = inputs === undefined ? undefined : cellArea(fills);
  return area === undefined || inputs === undefined ? undefined : { sheet, area, ...inputs };
}
