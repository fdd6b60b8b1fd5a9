// Sentences for what a workbook could not do. The adapters put them into a WorkbookProblem.
import { quoted } from "../quoted";

export const noSuchSheet = (sheet: string): string =>
  `This workbook has no sheet named ${quoted(sheet)}. It may have been renamed or deleted; look at the sheet tabs and choose again.`;

export const notACellRange = (range: string): string => `${quoted(range)} is not a cell or a range of cells. Give one such as B7 or A1:C3.`;

export const cellNotBlank = (cell: string): string => `Cell ${cell} is not blank, and nothing is ever written over. Select a blank cell.`;

export const notACellFormula = (text: string): string => `${quoted(text)} is not a cell formula. A cell formula begins with "=".`;

export const formulaNotAccepted = (formula: string): string =>
  `The workbook did not accept the cell formula ${quoted(formula)}. Check its brackets, commas and quotation marks.`;

export const sheetNameBlank = "A sheet needs a name. Give one of 1 to 31 characters.";

export const sheetNameMarks = (name: string): string =>
  `${quoted(name)} cannot name a sheet. Leave out \\ / ? * [ ] : and an apostrophe at either end.`;

export const sheetNameReserved = (name: string): string => `${quoted(name)} is a name the spreadsheet keeps for itself. Choose another sheet name.`;

export const textTooLong = (what: string, length: number, limit: number): string =>
  `The ${what} has ${length} characters and the sheet can hold ${limit}. Shorten it.`;

export const wordWithComma = (word: string): string => `${quoted(word)} cannot be offered in a list of words: it holds a comma. Reword it.`;

export const valuesDoNotFit = (range: string): string => `The values for ${range} do not fit its rows and columns, so nothing was changed.`;

export const cellBeingEdited = "A cell is being edited. Press Enter or Esc in the sheet and try again.";

export const workbookProtected = "This sheet or workbook is protected or read-only. Remove the protection, or work in a copy, and try again.";

export const tooMuchAtOnce = "That is more than the workbook takes at once. Choose fewer rows and try again.";

/** @param seconds that were waited */
export const notCalculatedWithin = (seconds: number): string =>
  `No cell was calculated for ${seconds} s. Share into a file of its own or fewer cells at once, or write formulas nested thousands of times in several cells.`;

export const hostBusy = "The workbook is busy with something else. Wait a moment and try again.";

export const olderThanNeeded = (host: string): string => `This version of ${host} cannot do that. Update it, or do this step on a newer version.`;

export const nameJustTaken = "Another sheet took that name meanwhile. Try again.";

const allNamed = (names: readonly string[]): string => names.map((name) => `"${name}"`).join(" and ");

/** @param because what went wrong, as a whole sentence */
export const sheetsMayBeLeft = (because: string, names: readonly string[]): string => {
  return `${because} ${allNamed(names)} may be left unfinished in the workbook; the pane offers to remove what is left as soon as the workbook answers.`;
};

/**
 * @param because what went wrong, as a whole sentence
 * @param names of sheets that somebody typed into, renamed or duplicated
 */
export const keptForItsChanges = (because: string, names: readonly string[]): string =>
  names.length === 1
    ? `${because} ${allNamed(names)} is unfinished, but somebody changed it meanwhile, so it was kept. Move what is yours, then delete the sheet.`
    : `${because} ${allNamed(names)} are unfinished, but somebody changed them meanwhile, so they were kept. Move what is yours, then delete the sheets.`;

/** @param because what went wrong, as a whole sentence */
export const cameMeanwhile = (because: string, names: readonly string[]): string =>
  `${because} ${allNamed(names)} came into the workbook meanwhile and may be an unfinished sheet of this try. Look at it, and delete it unless somebody needs it.`;

export const removedMeanwhile = "A sheet was removed while it was being made, so nothing was made. Try again.";

export const typedIntoCopy = "Somebody typed into the copy while it was being made, so it was not finished.";

/** Nothing has been made then, or what was has been taken away. */
export const changedWhileCopied = (sheet: string): string =>
  `${quoted(sheet)} was changed while it was copied, so no copy was made. Wait until nobody types there, then share again.`;

/** Nothing has been changed then. */
export const changedMeanwhile = (sheet: string): string =>
  `${quoted(sheet)} was changed a moment ago, so nothing was done. Finish typing there, then press again.`;

/** Rows hidden by a filter take no part in what is put in. */
export const sheetFiltered = (sheet: string): string =>
  `A filter hides rows of ${quoted(sheet)}, so nothing was done. Clear the filter on the Data tab, then press again.`;

/** @param because what went wrong, as a whole sentence @param held what somebody typed, under the name of its cell */
export const typedNotPutBack = (because: string, held: readonly (readonly [cell: string, typed: string])[]): string =>
  `${because} Somebody typed meanwhile, and this could not be put back: ${held.map(([cell, typed]) => `${quoted(typed)} in ${cell}`).join(", ")}. Look there, and type it again if it is missing.`;

/** @param because what went wrong, as a whole sentence */
export const formulaMayStand = (because: string, cell: string): string =>
  `${because} Look at cell ${cell}: the formula may stand there. If something of yours stood there a moment before, undo brings it back.`;

/** @param held what the cell held, as the sheet would take it back */
export const notPutBack = (cell: string, held: string): string =>
  `Something came into cell ${cell} just before the formula did, and could not be put back. It was ${quoted(held)}: look at the cell, and type that again if it is not there. Undo brings back anything newer.`;

/** @param held what the cell held before, as the sheet would take it back */
export const newerStands = (cell: string, held: readonly string[]): string =>
  `Cell ${cell} is being typed into, so the formula was not kept there. What stands there now is the newest; before that it was ${held.map(quoted).join(" and ")}.`;

/** Said where a value was to be changed or taken back. */
export const changedSince = (cell: string): string => `Cell ${cell} holds something else by now, so it was left as it is. Look at it in the sheet.`;

/** @param because what went wrong, as a whole sentence */
export const valueMayStand = (because: string, cell: string): string =>
  `${because} Look at cell ${cell} before you go on: it may have been written. If something of yours stood there, undo brings it back.`;

/** @param held what the cell held, as the sheet would take it back */
export const valueNotPutBack = (cell: string, held: string): string =>
  `Something came into cell ${cell} just before it was written, and could not be put back. It was ${quoted(held)}: look at the cell, and type that again if it is not there. Undo brings back anything newer.`;

/** @param held what the cell held before, as the sheet would take it back */
export const newerThanValue = (cell: string, held: readonly string[]): string =>
  `Cell ${cell} is being typed into, so nothing was kept there. What stands there now is the newest; before that it was ${held.map(quoted).join(" and ")}.`;

/** @param because what went wrong, as a whole sentence @param entered cells that are certainly entered */
export const reentryBrokeOff = (because: string, entered: number): string =>
  `${because} ${entered === 0 ? "Some formulas may have been entered again, no other cell was changed" : `${entered} formulas were entered again, some more may have been, and no other cell was changed`}: press again for the rest.`;

/** Some hosts act only on the workbook in front, and then say no more than that something went wrong. */
export const hostRefused = (host: string, because: string): string =>
  `${host} could not do this (${because}). With several workbooks open, click into a cell of this one first, then try again.`;

export const libraryOutOfReach = (host: string): string =>
  `Retort could not reach the ${host} library it needs. Check the internet connection or ask who runs your network, then reopen this pane.`;

export const hostDidNotAnswer = (host: string, seconds: number): string =>
  `${host} did not answer within ${seconds} seconds. Close this pane and open it again from the Home tab.`;

export const openedOutside = (host: string): string =>
  `This page works inside ${host}. Open a workbook there and choose Retort on the Home tab. To try Retort without ${host}, use its local workbook.`;

export const hostTooOld = (host: string): string =>
  `This version of ${host} is too old for the Retort pane. The cell functions may still work; for the pane, update ${host}.`;
