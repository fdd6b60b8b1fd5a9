// Sentences about changing a workbook file in place: what cannot be changed so, and what to do.
import { quoted } from "../quoted";

const SAVE_AGAIN = "Open the file in a spreadsheet program, save it as .xlsx again and use that.";

export const partEncoding = (part: string): string =>
  `The part ${quoted(part)} of this workbook is written in letters that are neither UTF-8 nor UTF-16, so nothing was changed. ${SAVE_AGAIN}`;

export const cellsOutOfOrder = (sheet: string, cell: string): string =>
  `The cells of sheet ${quoted(sheet)} are not in order in the file: ${cell} comes too late. Nothing was changed. ${SAVE_AGAIN}`;

export const sheetNotInFile = (sheet: string): string => `This workbook has no sheet ${quoted(sheet)} with cells, so nothing was changed.`;

export const cellOfArray = (sheet: string, cell: string, area: string): string =>
  `${cell} on sheet ${quoted(sheet)} is filled by the array formula of ${area}, of which no part can be changed alone. Change the formula in its first cell, or all of ${area}.`;

export const cellOfDataTable = (sheet: string, cell: string, area: string): string =>
  `${cell} on sheet ${quoted(sheet)} belongs to the what-if data table ${area}, whose cells cannot be changed. Take the table out in the program the file comes from.`;

export const headingOfTable = (sheet: string, cell: string, table: string): string =>
  `${cell} on sheet ${quoted(sheet)} is a heading of the table ${quoted(table)}, by which formulas name its column, and cannot be changed in the file. Change it in the program the file comes from.`;

export const cellChangedTwice = (sheet: string, cell: string): string =>
  `${cell} on sheet ${quoted(sheet)} is to be changed twice at once, so nothing was changed. Give each cell one change.`;

export const macrosNameSheets =
  "This workbook has macros, which may name any of its sheets, so no sheet is taken out of it. Save it as .xlsx, without the macros, and use that.";

export const lastSheetStays = "A workbook needs at least one sheet, so nothing was changed. Name a sheet that is to stay.";

// Why a file that was opened is written anew, and what it then lacks.

export const rowsMoved = (sheet: string): string => `Rows, columns or cells of sheet ${quoted(sheet)} were put in, taken out or moved.`;

export const sheetChanged = (sheet: string): string =>
  `Merged cells, rows that stay in view or rules for entries of sheet ${quoted(sheet)} were changed.`;

export const namesChanged = "Defined names were changed.";

export const writtenAnew = (fileName: string, because: string): string =>
  `${because} ${fileName} can therefore only be written anew, without what is listed here. The file you opened stays as it is.`;

/** @param cells with their sheets, as many as a line holds @param more how many further ones */
export const keptFromBefore = (cells: readonly string[], more: number): string =>
  `${cells.join(", ")}${more === 0 ? "" : ` and ${more} more`} ${cells.length + more === 1 ? "shows a value" : "show values"} from before: something that ${cells.length + more === 1 ? "it is" : "they are"} calculated from was changed, and the cell ${cells.length + more === 1 ? "formula" : "formulas"} cannot be calculated rightly here. Save the workbook and let the spreadsheet it comes from calculate it.`;

// As many as a line holds.
const LOST_NAMED = 5;

/** @param cells that lose their formulas, with their sheets, as the file names them */
export const formulasLost = (cells: readonly string[]): string => {
  const more = cells.length - LOST_NAMED;
  const one = cells.length === 1;
  return `${cells.slice(0, LOST_NAMED).join(", ")}${more > 0 ? ` and ${more} more` : ""} ${one ? "holds its value" : "hold their values"} without ${one ? "its" : "their"} cell ${one ? "formula" : "formulas"}, which cannot be calculated here, and ${one ? "does" : "do"} not follow any change. ${one ? "It is" : "They are"} named as the opened file has ${one ? "it" : "them"}.`;
};

export const notWrittenAnew = (fileName: string): string => `${fileName} was not saved.`;

export const looksNotKept = "looks not known here, such as underlining and the colours of a theme, and settings of pages";
