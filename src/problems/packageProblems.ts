// Sentences about changing a workbook file in place: what cannot be changed so, and what to do.
import { quoted } from "./quoted";

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

export const cellChangedTwice = (sheet: string, cell: string): string =>
  `${cell} on sheet ${quoted(sheet)} is to be changed twice at once, so nothing was changed. Give each cell one change.`;

export const macrosNameSheets =
  "This workbook has macros, which may name any of its sheets, so no sheet is taken out of it. Save it as .xlsx, without the macros, and use that.";

export const lastSheetStays = "A workbook needs at least one sheet, so nothing was changed. Name a sheet that is to stay.";
