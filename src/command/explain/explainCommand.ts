import { unquotedSheet } from "../../workbook/quotedSheet";
import { Command } from "commander";
import { explainCell } from "../../explanation/explainCell";
import { cellArea, COLUMNS_OF_A_SHEET, ROWS_OF_A_SHEET } from "../../workbook/cellArea";
import { sheetCalled, type Book, type BookSheet } from "../book/Book";
import type { Reader } from "../../explanation/saved/calculatedFromThese";
import { doubtsBehind, refuseDoubts } from "../book/doubts";
import { openBook } from "../book/openBook";
import { nameOnSheet } from "../../workbook/nameOnSheet";
import { Refusal, WrongUsage } from "../Refusal";
import { printable, type Terminal } from "../Terminal";
import { explanationLines } from "../words/explainWords";
import { BOOK, exampleLines, explainHelp, JSON_ANSWER, RECALCULATE } from "../words/helpWords";
import { neverCalculated, notACell, sheetNamedTwice, staleBook } from "../words/refusals";
import { FileCells } from "./FileCells";

interface ExplainOptions {
  readonly sheet?: string;
  readonly recalculate: boolean;
  readonly json: boolean;
}

export const explainCommand = (terminal: Terminal): Command =>
  new Command("explain")
    .description(explainHelp.about)
    .argument("<book>", BOOK)
    .argument("<cell>", explainHelp.cell)
    .option("--sheet <name>", explainHelp.sheet)
    .option("--recalculate", RECALCULATE, false)
    .option("--json", JSON_ANSWER, false)
    .addHelpText("after", exampleLines(explainHelp.examples))
    .action(async (path: string, asked: string, { sheet, recalculate, json }: ExplainOptions) => {
      const place = placeAsked(asked, sheet);
      const sheetIn = (book: Book): BookSheet => (place.sheet === undefined ? firstInView(book) : sheetCalled(book, place.sheet));
      const reader = (book: Book): Reader => ({ sheets: [sheetIn(book).name], cell: anchorAt(book, sheetIn(book), place.cell) });
      const book = await openBook(terminal, path, { recalculate, reader });
      const found = sheetIn(book);
      const address = { sheet: found.name, cell: place.cell };
      const cells = new FileCells(book);
      refuseUncalculated(book, found, place.cell, cells);
      const explained = await explainCell(
        { look: async () => cells.look(address), readInputs: (at, wanted) => cells.readInputs(at, wanted), cellsBeside: () => cells.cellsBeside() },
        address,
      );
      terminal.answer(json ? `${JSON.stringify(explained, undefined, 2)}\n` : `${printable(explanationLines(explained).join("\n"))}\n`);
    });

/** @throws WrongUsage for what is no cell, and for two sheets */
function placeAsked(asked: string, sheet: string | undefined): { readonly cell: string; readonly sheet: string | undefined } {
  const mark = asked.lastIndexOf("!");
  const cell = asked.slice(mark + 1).replaceAll("$", "").toUpperCase(); // prettier-ignore
  const { row = 0, column = 0, rows = 0, columns = 0 } = cellArea(cell) ?? {};
  if (rows !== 1 || columns !== 1 || row >= ROWS_OF_A_SHEET || column >= COLUMNS_OF_A_SHEET) throw new WrongUsage(notACell(asked));
  const written = mark === -1 ? undefined : asked.slice(0, mark);
  const inCell = written === undefined ? undefined : unquotedSheet(written);
  if (inCell !== undefined && sheet !== undefined && inCell.toLowerCase() !== sheet.toLowerCase())
    throw new WrongUsage(sheetNamedTwice(inCell, sheet));
  return { cell, sheet: inCell ?? sheet };
}

/** The cell whose formula fills a cell. */
const anchorAt = (book: Book, sheet: BookSheet, cell: string): string => new FileCells(book).look({ sheet: sheet.name, cell }).anchor?.cell ?? cell;

const firstInView = ({ sheets }: Book): BookSheet => sheets.find(({ isHidden }) => !isHidden) ?? (sheets[0] as BookSheet);

/** Errors are what an explanation is for; values from before, and cells that were never calculated, are not, wherever they come from. */
function refuseUncalculated(book: Book, sheet: BookSheet, cell: string, cells: FileCells): void {
  const { reading, anchor = reading } = cells.look({ sheet: sheet.name, cell });
  if (anchor.formula === "") return;
  if (anchor.value === null) throw new Refusal(neverCalculated([nameOnSheet(sheet.name, anchor.cell)], book.isCalculatedHere));
  if (book.isStale) throw new Refusal(staleBook);
  refuseDoubts(book, doubtsBehind(book, sheet, anchor));
}
