import { InputProblem } from "./InputProblem";
import { quoted } from "./quoted";

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

export const errorInCall = (sheet: string, cells: readonly CellInTheWay[]): InputProblem =>
  new InputProblem(
    "sheet",
    `${named(sheet, cells)} in error (${codes(cells)})`,
    "Select the cell to read why under This cell, mend it, then share again.",
  );

// As many as a message of one or two lines can hold.
const CELLS_NAMED = 3;

/** `B7, B8 and B9 (and 4 more) on "Tin 3" are` */
function named(sheet: string, cells: readonly CellInTheWay[]): string {
  const first = cells.slice(0, CELLS_NAMED).map(({ cell }) => cell);
  const rest = cells.length - first.length;
  const list = first.length === 1 ? first[0] : `${first.slice(0, -1).join(", ")} and ${first.at(-1)}`;
  return `${list}${rest > 0 ? ` (and ${rest} more)` : ""} on ${quoted(sheet)} ${cells.length === 1 ? "is" : "are"}`;
}

const codes = (cells: readonly CellInTheWay[]): string => [...new Set(cells.map(({ code }) => code))].join(", ");
