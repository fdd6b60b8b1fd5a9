import type { Place } from "../../explanation/saved/calculatedFromThese";
import { sheetsNeeded } from "../../explanation/saved/sheetsNeeded";
import { areaNamed } from "../../workbook/areaNamed";
import { cellsOfArea } from "../../workbook/cellArea";
import { nameOnSheet } from "../../workbook/nameOnSheet";
import { WorkbookProblem, type CellReading } from "../../workbook/Workbook";
import { Refusal } from "../Refusal";
import { notCheckedHere } from "../words/refusals";
import type { Book } from "./Book";
import type { BookInDoubt } from "./doubts";
import type { Calculated } from "./recalculate";
import { isSame } from "./refuseDoubtful";

const blankAt = (cell: string): CellReading => ({ cell, formula: "", value: null, shown: "", error: "", message: "", spill: "" });

/**
 * Cells that are calculated from a call of ours and whose values no rule of ours shows to be right: the grid's engine, which alone is believed of few
 * functions, is believed where it gives what another spreadsheet has saved.
 * @throws Refusal naming those that it gives otherwise, or not at all
 */
export async function refuseUnchecked(book: BookInDoubt & Pick<Book, "content" | "file">, cells: readonly Place[]): Promise<void> {
  if (cells.length === 0) return;
  if (book.isCalculatedHere) throw new Refusal(notCheckedHere(cells.map(({ sheet, cell }) => nameOnSheet(sheet, cell)), true)); // prettier-ignore
  const on = new Set(cells.map(({ sheet }) => sheet));
  // The grid's engine takes a second to load, so it is loaded only here.
  const { calculated } = await import("./recalculate");
  const only = sheetsNeeded(book, book.sheets.filter(({ name }) => on.has(name))); // prettier-ignore
  const here = await calculated(book.content, await book.file.countsFrom1904(), only).catch((error: unknown) => {
    // A book that holds too much for the grid.
    if (error instanceof WorkbookProblem) return new Map() as Calculated;
    throw error;
  });
  const saved = new Map(book.sheets.filter(({ name }) => on.has(name)).map(({ name, reading }) => [name, new Map(reading.rows.flat().map((one) => [one.cell, one]))])); // prettier-ignore
  const isShown = ({ sheet, cell }: Place): boolean => {
    const [was, now] = [saved.get(sheet)?.get(cell), here.get(sheet)?.get(cell)];
    if (was === undefined || now === undefined || now.formula === "") return false;
    const filled = was.spill === "" ? [cell] : cellsOfArea(areaNamed(was.spill)).flat();
    return filled.every((one) => isSame(saved.get(sheet)?.get(one) ?? blankAt(one), here.get(sheet)?.get(one)));
  };
  const left = cells.filter((one) => !isShown(one));
  if (left.length > 0) throw new Refusal(notCheckedHere(left.map(({ sheet, cell }) => nameOnSheet(sheet, cell))));
}
