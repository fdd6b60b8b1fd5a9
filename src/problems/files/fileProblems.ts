// Sentences about workbook files: what was chosen instead of one, what is too much, and what of one is not shown.
import { counted, plainNumber, quoted } from "../quoted";

export const notAWorkbookFile = "This file is not an .xlsx workbook or is damaged, so nothing was changed. Choose a file saved as .xlsx.";

/** @param part of the file, "xl/worksheets/sheet1.xml" */
export const damagedPart = (part: string, why: string): string =>
  `This file is damaged, so nothing was changed: its part ${quoted(part)} cannot be read (${quoted(why)}). Open it in a spreadsheet, let that repair it, save it as .xlsx and take that file.`;

const savedInstead = (what: string, doThis: string): string => `This file is ${what}, so nothing was changed. ${doThis}`;
const SAVE_AS_XLSX = "Open it in the program it comes from, save it as .xlsx and open that here.";

/** For each kind of file that is no .xlsx workbook. */
export const otherFile: Readonly<Record<string, string>> = {
  empty: "This file is empty, so nothing was changed. It may not have been downloaded to its end; fetch it again.",
  locked: savedInstead(
    "locked with a password, or by rules of an organisation",
    "Open it in the program it comes from, save a copy without the password and open that here.",
  ),
  "older workbook": savedInstead("in an older Office format (.xls)", SAVE_AS_XLSX),
  "binary workbook": savedInstead("a binary workbook (.xlsb)", SAVE_AS_XLSX),
  opendocument: savedInstead("an OpenDocument file (.ods)", SAVE_AS_XLSX),
  numbers: savedInstead("a document of Apple's office programs (.numbers)", "Export it as .xlsx and open that here."),
  document: savedInstead("a document or slides, not a workbook", "Choose a file saved as .xlsx."),
  archive: savedInstead("a .zip archive without a workbook's parts", "Unpack it and choose the .xlsx file in it."),
  picture: savedInstead("a picture", "Choose a file saved as .xlsx."),
  pdf: savedInstead("a PDF document", "Choose a file saved as .xlsx."),
  "web page": savedInstead("a web page or XML text, whatever its name ends with", SAVE_AS_XLSX),
  text: savedInstead(
    "text, such as a .csv list, in which nobody can tell decimal commas from separators",
    "Open it in a spreadsheet, look at its numbers, save it as .xlsx and open that here.",
  ),
  unknown: notAWorkbookFile,
};

const CHOOSE_LESS = "Nothing was changed. Take out what is not needed, in the program the file comes from, and open what is left.";

export const tooMuchInFile = `This file unpacks to more than a workbook can hold here. ${CHOOSE_LESS}`;

export const tooManyCells = (most: number): string => `This workbook holds more than ${plainNumber(most)} filled cells. ${CHOOSE_LESS}`;

export const tooManySheets = (sheets: number, most: number): string =>
  `This workbook has ${plainNumber(sheets)} sheets; ${plainNumber(most)} can be opened here. ${CHOOSE_LESS}`;

export const textOfFileTooLong = (what: "text" | "cell formula", length: number, most: number): string =>
  `This workbook holds a ${what} of ${plainNumber(length)} characters; a cell can hold ${plainNumber(most)}. ${CHOOSE_LESS}`;

export const formulaTooNested = (brackets: number, operators: number): string =>
  `This workbook holds a cell formula with more than ${plainNumber(brackets)} brackets within one another or more than ${plainNumber(operators)} operators. Write it in several cells, or choose another file.`;

export const noSheetsInFile = "This workbook has no sheet with cells, so nothing was changed. Choose another file.";

export const readingFailed = (why: string): string =>
  `This file could not be read to its end, which is a defect of this page and not of the file; nothing was changed. What happened: ${quoted(why)}.`;

// What of an opened file is not shown.

export const openedInPart = (fileName: string): string =>
  `Opened ${fileName}. Not all that is in it can be shown here. What is not shown stays in it when it is saved from here.`;

/** How each kind of thing is called, alone and in number; the number stands before it. */
const THINGS: Readonly<Record<string, readonly [one: string, several: string]>> = {
  chart: ["chart", "charts"],
  picture: ["picture", "pictures"],
  drawing: ["drawing", "drawings"],
  comment: ["sheet with comments", "sheets with comments"],
  table: ["table, shown as plain cells", "tables, shown as plain cells"],
  pivot: ["pivot table, shown as plain cells", "pivot tables, shown as plain cells"],
  conditional: ["rule for colouring cells by their values", "rules for colouring cells by their values"],
  link: ["link, of which the text is shown", "links, of which the text is shown"],
  outside: [
    "cell formula that reads another workbook, shown as the value it had",
    "cell formulas that read other workbooks, shown as the values they had",
  ],
  notCalculated: [
    "cell formula that cannot be calculated rightly here, shown as the value it had",
    "cell formulas that cannot be calculated rightly here, shown as the values they had",
  ],
  dataTable: ["cell of a what-if data table, shown as the value it had", "cells of what-if data tables, shown as the values they had"],
  structured: [
    "cell formula that names a table in a way not known here, shown as the value it had",
    "cell formulas that name tables in a way not known here, shown as the values they had",
  ],
  orphan: [
    "cell formula that is filled from another one the file does not have, shown as the value it had",
    "cell formulas that are filled from others the file does not have, shown as the values they had",
  ],
  merged: ["area of merged cells too large to be shown merged", "areas of merged cells too large to be shown merged"],
  rich: ["text with several looks in one cell, shown in one", "texts with several looks in one cell, shown in one"],
  entryRule: ["rule for entries of a kind not known here, shown as its prompt", "rules for entries of kinds not known here, shown as their prompts"],
  hiddenSheet: ["hidden sheet, shown here", "hidden sheets, shown here"],
  hiddenLine: ["sheet with hidden rows or columns, shown here", "sheets with hidden rows or columns, shown here"],
  noCells: ["sheet without cells, such as one that is a chart", "sheets without cells, such as those that are charts"],
  protection: ["protection of a sheet or the workbook", "protections of sheets or the workbook"],
  filter: ["filter of rows", "filters of rows"],
  sparkline: ["group of small charts in cells", "groups of small charts in cells"],
  name: ["defined name that stands for something not known here, left out", "defined names that stand for things not known here, left out"],
  macro: ["set of macros", "sets of macros"],
  control: ["button or other control", "buttons or other controls"],
  other: ["other part", "other parts"],
};

/** What is said of each thing that a file saved from here keeps. */
export const keptOnSaving = (thing: string): string => `${thing}: kept on saving`;

/** "2 charts (Orchard kiln, Salts class)". */
export function notShown(thing: string, count: number, sheets: readonly string[]): string {
  const [one, several] = THINGS[thing] ?? [thing, thing];
  return `${plainNumber(count)} ${count === 1 ? one : several}${sheets.length === 0 ? "" : ` (${sheets.join(", ")})`}`;
}

export const datesMoved =
  "This file counts days from 1904; its dates were counted anew from 1900, as everywhere else. Look at plain numbers that stand for days.";

export const coveredValues = (count: number, first: string): string =>
  `${plainNumber(count)} ${count === 1 ? "cell holds a value" : "cells hold values"} under merged cells, where nobody sees them; sums count them all the same. The first is ${first}.`;

/** @param first the first such cell, with its sheet */
export const answersDiffer = (count: number, first: string, inFile: string, here: string): string => {
  const cells = count === 1 ? "1 cell formula gives" : `${plainNumber(count)} cell formulas give`;
  return `${cells} another value here than the program that saved the file wrote down: first ${first}, ${inFile} in the file and ${here} here. Do not rely on them here.`;
};

export const dayOrChance = "This workbook holds functions of the day or of chance (TODAY, NOW, RAND), so some of these may rightly differ.";

// What was typed and not saved as a file.

export const unsavedBefore = (what: string): string =>
  `Something was typed since the last save. Opening ${what} puts its sheets in place of all that are open here.`;

export const keptUnsaved = (what: string): string => `${what} was not opened; the sheets stay as they are.`;

export const copyKept = (time: string): string => `Not saved as a file yet. A copy from ${time} is kept in this browser.`;

/** @param name of the file that the sheets come from */
export const copyKeptInPart = (time: string, name: string): string =>
  `Not saved as a file yet. A copy from ${time} is kept in this browser, but its storage is full: what ${name} holds that is not shown here is not in the copy. Save the workbook as a file.`;

/** @param lastTime of the copy before; "" where there is none */
export const copyNotKept = (lastTime: string): string =>
  `No copy could be kept: this browser's storage is full. ${lastTime === "" ? "" : `The last copy is from ${lastTime}. `}Save the workbook as a file.`;

export const nothingKeptHere = "This browser keeps no copy of what is not saved, as in some private windows. Save the workbook as a file.";

export const copyOffered = (when: string, sheets: readonly string[]): string => {
  const [first = "", ...others] = sheets;
  const rest = others.length === 0 ? "" : ` and ${counted(others.length, "more sheet")}`;
  return `A copy of sheets that were not saved as a file was kept in this browser on ${when}: ${quoted(first)}${rest}. Opening it puts them in place of the sheets shown now.`;
};

export const copyOfFile = (name: string): string => `They come from ${name}, which was kept with them with everything in it.`;

/** @param lacks what of the file is not in the copy, each in words */
export const copyLacks = (name: string, lacks: readonly string[]): string =>
  `They come from ${name}, for which this browser had no room. What the file holds besides is not in the copy: ${lacks.join("; ")}.`;

export const copyGoes = (when: string): string => `The copy from ${when} was not saved as a file, and cannot be brought back once it is removed.`;

export const copyOpened = (when: string): string => `Opened the copy from ${when}. Save it as a file to keep it.`;

export const copyOpenedInPart = (when: string, name: string): string =>
  `Opened the copy from ${when}. It lacks what ${name} holds besides, which is listed; open ${name} itself where that is needed. Save the copy as a file to keep it.`;

export const copyNotOpened = "The copy could not be opened, so nothing was changed. It stays in this browser; try again after reloading the page.";

export const oneFileAtATime = "More than one file was dropped here, and nothing was opened. One workbook is open at a time: drop one file.";

export const saveOutOfReach =
  "The part of this page that reads and writes files could not be fetched. Start its server again at the same address, or go online, and try again.";
