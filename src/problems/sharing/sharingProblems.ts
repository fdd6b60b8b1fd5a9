import { InputProblem } from "../InputProblem";
import { quoted } from "../quoted";

/** A cell that stands in the way of sharing, with the error code it shows. */
export interface CellInTheWay {
  readonly cell: string;
  readonly code: string;
}

export const stillCalculating = (sheet: string, cells: readonly CellInTheWay[]): InputProblem =>
  new InputProblem(
    "sheet",
    `${named(sheet, cells)} not calculated yet (${codes(cells)})`,
    `Wait until ${cells.length === 1 ? "it shows" : "each shows"} a value, then share again.`,
  );

export const nameNotKnown = (sheet: string, cells: readonly CellInTheWay[]): InputProblem =>
  new InputProblem(
    "sheet",
    `${named(sheet, cells)} shown as #NAME?: the workbook has not loaded Retort's functions`,
    "Enter the cell formula again, then share again.",
  );

/** Errors may be meant, and the user may share them as they are. */
export class CellsInError extends InputProblem {}

export const errorInCall = (sheet: string, cells: readonly CellInTheWay[]): CellsInError =>
  new CellsInError(
    "sheet",
    `${named(sheet, cells)} in error (${codes(cells)})`,
    "Select the cell to read why under This cell, mend it, then share again.",
  );

/** Cells that are calculated from themselves show no error and no value that can be relied on. The user may share them as they are. */
export const calculatedInCircle = (sheet: string, cells: readonly Pick<CellInTheWay, "cell">[]): CellsInError =>
  new CellsInError(
    "sheet",
    `${named(sheet, cells)} calculated in a circle, from ${cells.length === 1 ? "itself" : "themselves"}: what a spreadsheet shows there need not be right`,
    "Take the circle out, then share again.",
  );

/** The workbook says that something waits, and nothing happens: the values shown may well be final, and the user may go on with them. */
export class StaysPending extends InputProblem {}

export const workbookCalculating = (sheet: string): InputProblem =>
  new InputProblem(
    "sheet",
    `the workbook is calculating, so values on ${quoted(sheet)} may be from before`,
    "Wait until it has finished, then share again.",
  );

export const calculatesWhenAsked = (sheet: string): InputProblem =>
  new InputProblem(
    "sheet",
    `the workbook calculates only when asked to and something waits, so values on ${quoted(sheet)} may be from before`,
    "Press F9, then share again.",
  );

export const staysPending = (sheet: string): StaysPending =>
  new StaysPending(
    "sheet",
    `the workbook says that something waits to be calculated, though nothing is under way, so values on ${quoted(sheet)} may be from before`,
    "Press F9 and share again, or share the values shown now.",
  );

export const notWhatFormulasGive = (sheet: string, cells: readonly Pick<CellInTheWay, "cell">[]): StaysPending =>
  new StaysPending(
    "sheet",
    `${named(sheet, cells)} from before: ${cells.length === 1 ? "its cell formula gives" : "their cell formulas give"} something else from the inputs that stand there`,
    "Calculate the workbook anew (in Excel Ctrl+Alt+F9) and share again, or share the values shown now.",
  );

/** Said beside what was made. */
export const notFollowedElsewhere =
  "Not every cell of other sheets that this is calculated from could be looked at: whether their values are from before was not checked.";

/** What the workbook itself cannot calculate any more is not to be shared from it. */
export const fromBefore = (sheet: string, cells: readonly Pick<CellInTheWay, "cell">[]): InputProblem =>
  new InputProblem(
    "sheet",
    `${named(sheet, cells)} from before: something that ${cells.length === 1 ? "it is" : "they are"} calculated from was changed, and a cell formula on the way cannot be calculated rightly here`,
    "Save the workbook, let the spreadsheet it comes from calculate it, and share it from there.",
  );

export const keepsChanging = (sheet: string): InputProblem =>
  new InputProblem("sheet", `values on ${quoted(sheet)} changed while they were read`, "Wait until nothing changes any more, then share again.");

/** Said after the copy has been made. */
export const copyTouched = (copy: string, sheet: string): string =>
  `Something was typed into ${quoted(copy)} while it was being made: compare it with ${quoted(sheet)} before you send it.`;

// As many as a message of one or two lines can hold.
const CELLS_NAMED = 3;

/** `B7, B8 and B9 (and 4 more) on "Tin 3" are` */
function named(sheet: string, cells: readonly Pick<CellInTheWay, "cell">[]): string {
  const first = cells.slice(0, CELLS_NAMED).map(({ cell }) => cell);
  const rest = cells.length - first.length;
  const list = first.length === 1 ? first[0] : `${first.slice(0, -1).join(", ")} and ${first.at(-1)}`;
  return `${list}${rest > 0 ? ` (and ${rest} more)` : ""} on ${quoted(sheet)} ${cells.length === 1 ? "is" : "are"}`;
}

const codes = (cells: readonly CellInTheWay[]): string => [...new Set(cells.map(({ code }) => code))].join(", ");
