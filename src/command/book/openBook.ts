import type { Terminal } from "../Terminal";
import { contentOf } from "../files/bookFile";
import { readingFile, recalculating, sheetRead, type AsSaved } from "../words/refusals";
import { readBook, type Book, type BookSheet } from "./Book";
import type { Reader } from "../../explanation/saved/calculatedFromThese";
import { recalculatedBook } from "./recalculatedBook";
import { sheetsNeeded } from "../../explanation/saved/sheetsNeeded";

const BYTES_PER_MEGABYTE = 1e6;
// Smaller ones are read before anybody wonders.
const LONG = 100_000;

export interface OpenBook extends Book {
  /** Says what is being done where a book is long enough to wait for. */
  readonly progress: (line: string) => void;
}

interface Opening {
  readonly recalculate: boolean;
  /** The sheets that are wanted of it, which alone are calculated, with those that they are calculated from; left out: all. */
  readonly wanted?: (book: Book) => readonly BookSheet[];
  /** The one cell that is wanted of it: of what that is not calculated from nothing is refused. */
  readonly reader?: (book: Book) => Reader;
  /** How the command is told to take what the file holds. */
  readonly asSaved?: AsSaved;
}

/** Reads a workbook file, and calculates it here where that is asked for. */
export async function openBook(
  terminal: Terminal,
  path: string,
  { recalculate, wanted, reader, asSaved = "leave out --recalculate" }: Opening,
): Promise<OpenBook> {
  const content = await contentOf(path);
  const progress = content.length < LONG ? (): void => undefined : terminal.note;
  progress(readingFile(path, (content.length / BYTES_PER_MEGABYTE).toFixed(1)));
  const book = await readBook(content, (sheet, cells) => progress(sheetRead(sheet, cells)));
  if (!recalculate) return { ...book, progress };
  progress(recalculating);
  // The grid's engine takes a second to load, so it is loaded only here.
  const { calculated } = await import("./recalculate");
  const from1904 = await book.file.countsFrom1904();
  const only = wanted && sheetsNeeded(book, wanted(book));
  return {
    ...recalculatedBook(book, await calculated(content, from1904, only), { from1904, asSaved, ...(reader && { reader: reader(book) }) }),
    progress,
  };
}
