import { counted } from "../quoted";

// What the pane says about formulas that came back broken.

// As many as a message of one or two lines can hold.
const CELLS_NAMED = 6;

const named = (cells: readonly string[]): string => {
  const rest = cells.length - CELLS_NAMED;
  return `${cells.slice(0, CELLS_NAMED).join(", ")}${rest > 0 ? ` and ${rest} more` : ""}`;
};

export const nothingToMend = (sheet: string): string => `No cell of "${sheet}" has a Retort function that has to be entered again.`;

/** @param recorded how many of them come from the calculation record */
export const canBeMended = (sheet: string, cells: readonly string[], recorded: number): string => {
  const from =
    recorded === 0
      ? ""
      : ` ${recorded === 1 ? "One of them shows" : `${recorded} of them show`} an error alone; the formula comes from the calculation record.`;
  return `${counted(cells.length, "cell")} of "${sheet}" can be entered again: ${named(cells)}.${from} No other cell is touched.`;
};

export const beyondMending = (cells: readonly string[]): string =>
  `${named(cells)}: ${cells.length === 1 ? "shows" : "show"} #NAME? and neither the cell nor a calculation record tells a formula of this version of Retort. Undo, or an older copy of the workbook, may have it.`;

export const enterAgain = (cells: number): string => `Enter ${counted(cells, "formula")} again`;

export const mended = (cells: number): string => `Entered ${counted(cells, "formula")} again.`;

export const changedMeanwhileLeft = (cells: readonly string[]): string =>
  `${named(cells)} ${cells.length === 1 ? "holds something else by now and stayed as it is" : "hold something else by now and stayed as they are"}.`;

export const stillUnknown = (cells: readonly string[]): string =>
  `${named(cells)} still ${cells.length === 1 ? "shows" : "show"} #NAME?: something in the formula is known neither to the workbook nor to Retort. Select the cell to read it under This cell.`;
