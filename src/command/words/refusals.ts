import { counted, quoted } from "../../problems/quoted";

// As many as a message of a few lines can hold.
const NAMED = 5;

/** `"Tin 3"!B7, "Tin 3"!B8 and 4 more` */
export function cellsNamed(cells: readonly string[]): string {
  const first = cells.slice(0, NAMED);
  const rest = cells.length - first.length;
  if (rest > 0) return `${first.join(", ")} and ${rest} more`;
  return first.length < 2 ? first.join("") : `${first.slice(0, -1).join(", ")} and ${first.at(-1)}`;
}

const isOrAre = (cells: readonly string[]): string => (cells.length === 1 ? "is" : "are");
const OPEN_AND_SAVE = "Open the workbook in the spreadsheet with the add-in, let it calculate, save it and try again";

/** @param isRecalculated true where --recalculate was given and was of no help */
const openAndSave = (isRecalculated: boolean): string => (isRecalculated ? `${OPEN_AND_SAVE}.` : `${OPEN_AND_SAVE}, or give --recalculate.`);

export const notWhatFormulasGive = (cells: readonly string[], isRecalculated = false): string =>
  `The file holds another value in ${cellsNamed(cells)} than the cell ${cells.length === 1 ? "formula gives" : "formulas give"} from the inputs beside ${cells.length === 1 ? "it" : "them"}, so ${cells.length === 1 ? "it is" : "they are"} from before. ${openAndSave(isRecalculated)}`;

/** Cells whose formulas are worked out here neither by rule nor by the grid. @param isRecalculated true where --recalculate was given and was of no help */
export const notCheckedHere = (cells: readonly string[], isRecalculated = false): string => {
  const isOne = cells.length === 1;
  const keep = `let the spreadsheet with the add-in calculate and save the workbook, and give --keep-errors to share ${isOne ? "that value" : "those values"} as saved`;
  const remedy = isRecalculated ? `${keep.charAt(0).toUpperCase()}${keep.slice(1)}.` : `Give --recalculate, or ${keep}.`;
  return `Whether ${cellsNamed(cells)} ${isOne ? "holds what its cell formula gives" : "hold what their cell formulas give"} cannot be checked here, and ${isOne ? "it is" : "they are"} calculated from a Retort function, so what the file holds may be from before. ${remedy}`;
};

export const staleBook = `The file says that it is to be calculated when it is opened, so its values may be from before. ${openAndSave(false)}`;

export const neverCalculated = (cells: readonly string[], isRecalculated = false): string =>
  `No value was saved beside ${cells.length === 1 ? "the cell formula" : "the cell formulas"} of ${cellsNamed(cells)}. ${openAndSave(isRecalculated)}`;

/** @param fillers the cells whose formulas fill them */
export const halfFilled = (cells: readonly string[], fillers: readonly string[], isRecalculated = false): string =>
  `No value was saved in ${cellsNamed(cells)}, which the cell ${fillers.length === 1 ? "formula" : "formulas"} of ${cellsNamed(fillers)} ${fillers.length === 1 ? "fills" : "fill"}. ${openAndSave(isRecalculated)}`;

export const onTheirWay = (cells: readonly string[], codes: string, isRecalculated = false): string =>
  `${cellsNamed(cells)} ${isOrAre(cells)} saved while still calculating (${codes}). ${openAndSave(isRecalculated)}`;

export const notLoaded = (cells: readonly string[], isRecalculated = false): string =>
  `${cellsNamed(cells)} ${isOrAre(cells)} saved as #NAME?: the program that saved the file had not loaded Retort's functions. ${openAndSave(isRecalculated)}`;

export const inError = (cells: readonly string[], codes: string): string =>
  `${cellsNamed(cells)} ${isOrAre(cells)} in error (${codes}). Mend ${cells.length === 1 ? "it" : "them"} ("retort explain" says why), or give --keep-errors to share the errors as they are.`;

export const inCircle = (cells: readonly string[]): string =>
  `${cellsNamed(cells)} ${isOrAre(cells)} calculated in a circle, from ${cells.length === 1 ? "itself" : "themselves"}, so the values saved there need not be right. Take the circle out, or give --keep-errors to share the values as they are.`;

export const hiddenLeftOut = (sheets: readonly string[]): string =>
  `Not shared, being hidden: ${sheets.map((name) => quoted(name)).join(", ")}. Name a sheet with --sheet to share it.`;

/** How a command is told to take what the file holds: most do so unless they are told otherwise, and a report calculates unless it is. */
export type AsSaved = "leave out --recalculate" | "give --no-recalculate";

const takeSaved = (asSaved: AsSaved = "leave out --recalculate"): string =>
  `${asSaved.charAt(0).toUpperCase()}${asSaved.slice(1)} after saving the workbook in the spreadsheet with the add-in.`;

export const notRecalculated = (cells: readonly string[], asSaved: AsSaved = "leave out --recalculate"): string =>
  `${cellsNamed(cells)} cannot be calculated here, though the file holds ${cells.length === 1 ? "a value" : "values"}: a function or reference that is not known here. ${takeSaved(asSaved)}`;

export const neverCalculatedHere = (cells: readonly string[], asSaved: AsSaved = "leave out --recalculate"): string =>
  `${cellsNamed(cells)} cannot be calculated rightly here, and the file holds no ${cells.length === 1 ? "value" : "values"}: several sheets or areas at once, a name of one sheet, or a function or reference that is not known here. ${takeSaved(asSaved)}`;

export const keptThoughChanged = (cells: readonly string[], asSaved: AsSaved = "leave out --recalculate"): string =>
  `${cellsNamed(cells)} cannot be calculated rightly here, and what the file holds may be from before: several sheets or areas at once, a name of one sheet, or a function or reference that is not known here. ${takeSaved(asSaved)}`;

/** @param isKnown true where the file holds values, which may be from before */
export const notProvenHere = (cells: readonly string[], isKnown: boolean, asSaved: AsSaved = "leave out --recalculate"): string =>
  `${cellsNamed(cells)} ${cells.length === 1 ? "holds a cell formula" : "hold cell formulas"} of which it is not known that every spreadsheet gives what is calculated here, and ${isKnown ? "what the file holds may be from before" : `the file holds no ${cells.length === 1 ? "value" : "values"}`}. Let a spreadsheet calculate ${cells.length === 1 ? "it" : "them"} first: ${takeSaved(asSaved).replace(/^./, (first) => first.toLowerCase())}`;

export const misreadHere = (cells: readonly string[], asSaved: AsSaved = "leave out --recalculate"): string =>
  `${cellsNamed(cells)} ${cells.length === 1 ? "comes" : "come"} out otherwise here than ${cells.length === 1 ? "its cell formula gives" : "their cell formulas give"}. ${takeSaved(asSaved)}`;

export const differsUnchanged = (cells: readonly string[], asSaved: AsSaved = "leave out --recalculate"): string =>
  `${cellsNamed(cells)} ${cells.length === 1 ? "comes" : "come"} out otherwise here than saved, though nothing changed that ${cells.length === 1 ? "it is" : "they are"} calculated from. ${takeSaved(asSaved)}`;

export const daysInDoubt = (cells: readonly string[], asSaved: AsSaved = "leave out --recalculate"): string =>
  `This file counts days from 1904, and ${cellsNamed(cells)} ${cells.length === 1 ? "comes" : "come"} out otherwise here than saved: whether as ${cells.length === 1 ? "a number or a day" : "numbers or days"} cannot be told. ${takeSaved(asSaved)}`;

export const noSuchSheet = (sheet: string, sheets: readonly string[]): string =>
  `There is no sheet ${quoted(sheet)} with cells in this workbook. Its sheets: ${sheets.map((name) => `"${name}"`).join(", ")}.`;

export const noSheets = "This workbook has no sheet with cells.";

/** @param doing what is not done with the sheet */
export const noCallsOfOurs = ({ done, doing }: (typeof DONE)[keyof typeof DONE]): string =>
  `No sheet in view of this workbook holds a Retort function, so nothing was ${done}. Name the sheet with --sheet to ${doing} it all the same.`;

/** What a command does with a sheet. */
export const DONE = {
  share: { done: "shared", doing: "share" },
  report: { done: "reported", doing: "report" },
  record: { done: "recorded", doing: "record" },
} as const;

export const noCallsAtAll = "No sheet of this workbook holds a Retort function, so it needs no plain cells and nothing was written.";

export const noFormulas = (sheet: string): string => `The sheet ${quoted(sheet)} holds no cell formula, so there is nothing to record.`;

export const notACell = (cell: string): string => `${quoted(cell)} is not a cell. Give one such as B7, or "Tin 3!B7".`;

export const sheetNamedTwice = (inCell: string, inOption: string): string =>
  `The cell names the sheet ${quoted(inCell)} and --sheet names ${quoted(inOption)}. Give one of them.`;

// Files.

export const inputMissing = (file: string): string => `There is no file ${file}. Look at its name and folder.`;
export const inputIsFolder = (file: string): string => `${file} is a folder. Give a workbook file.`;
export const inputNotReadable = (file: string, why: string): string => `${file} could not be read (${why}). Look at its permissions and try again.`;
export const outputIsInput = (file: string): string =>
  `${file} is the workbook that is read, which is never written over. Give another name after -o.`;
export const givenTwice = (option: string): string => `${option} is given twice. Give it once.`;
export const OVERWRITE_WITH_OUTPUT = "--overwrite goes with -o: without a file to write, nothing is written over.";
export const outputExists = (file: string): string => `${file} is there already, so nothing was written. Give another name after -o, or --overwrite.`;
export const outputIsFolder = (file: string): string => `${file} is a folder. Give the name of a file after -o.`;
export const folderMissing = (folder: string): string => `There is no folder ${folder}, so nothing was written. Make it, or give another one.`;
export const notWritten = (file: string, why: string): string =>
  `${file} could not be written (${why}), so nothing is there. Choose a folder that you may write to and that has room.`;
export const answerLost = (why: string): string =>
  `The answer could not be written to its end (${why}), so what is there is not whole. Send it where there is room.`;
export const wantsEnding = (file: string, ending: string): string =>
  file === "" ? "-o names no file. Give a name after it." : `${file} has to end in ${ending}, else programs refuse to open it.`;

export const internalError = (why: string): string => `Internal error, a defect of Retort and not of the file: ${why}`;

// Beside the answer.

export const written = (file: string): string => `Wrote ${file}.`;
export const readingFile = (file: string, megabytes: string): string => `Reading ${file} (${megabytes} MB) …`;
export const sheetRead = (sheet: string, cells: number): string => `  ${quoted(sheet)}: ${counted(cells, "cell")}`;
export const recalculating = "Calculating every cell formula …";
export const rewriting = (formulas: number): string => `Writing ${counted(formulas, "cell formula")} without the add-in …`;
export const recording = (formulas: number): string => `Recording how ${counted(formulas, "cell formula")} came about …`;
export const packing = "Packing the file …";
