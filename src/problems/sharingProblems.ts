import { InputProblem } from "./InputProblem";
import { quoted } from "./quoted";

/** A cell that stands in the way of sharing, with the error code it shows. */
export interface CellInTheWay {
  readonly cell: string;
  readonly code: string;
}

export const stillCalculating = (sheet: string, cells: readonly CellInTheWay[]): InputProblem =>
  new InputProblem(`${opening(sheet, cells)} not calculated yet (${codes(cells)}). Wait until ${pronoun(cells)} a value, then share again.`);

export const nameNotKnown = (sheet: string, cells: readonly CellInTheWay[]): InputProblem =>
  new InputProblem(
    `${opening(sheet, cells)} shown as #NAME?: the workbook has not loaded Retort's functions. Enter the cell formula again, then share again.`,
  );

export const errorInCall = (sheet: string, cells: readonly CellInTheWay[]): InputProblem =>
  new InputProblem(`${opening(sheet, cells)} in error (${codes(cells)}). Select the cell to read why under This cell, mend it, then share again.`);

// As many as a message of one or two lines can hold.
const CELLS_NAMED = 3;

/** `sheet: B7, B8 and B9 (and 4 more) on "Tin 3" are` */
function opening(sheet: string, cells: readonly CellInTheWay[]): string {
  const named = cells.slice(0, CELLS_NAMED).map(({ cell }) => cell);
  const rest = cells.length - named.length;
  const list = named.length === 1 ? named[0] : `${named.slice(0, -1).join(", ")} and ${named.at(-1)}`;
  return `sheet: ${list}${rest > 0 ? ` (and ${rest} more)` : ""} on ${quoted(sheet)} ${cells.length === 1 ? "is" : "are"}`;
}

const pronoun = (cells: readonly CellInTheWay[]): string => (cells.length === 1 ? "it shows" : "each shows");

const codes = (cells: readonly CellInTheWay[]): string => [...new Set(cells.map(({ code }) => code))].join(", ");
