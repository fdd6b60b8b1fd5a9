import { counted } from "../quoted";

// What is said of a sheet that is to be sent with its formulas.

// As many as a line can hold.
const CELLS_NAMED = 3;

const named = (cells: readonly string[]): string => {
  const rest = cells.length - CELLS_NAMED;
  return `${cells.slice(0, CELLS_NAMED).join(", ")}${rest > 0 ? ` and ${rest} more` : ""}`;
};

export const nothingNeedsRetort = (sheet: string): string =>
  `Nothing on "${sheet}" needs Retort: it calculates on everywhere. Save the workbook and send it.`;

export const callsOnSheet = (sheet: string, cells: readonly string[]): string =>
  `${counted(cells.length, "cell")} of "${sheet}" ${cells.length === 1 ? "calls" : "call"} a function of Retort: ${named(cells)}. Your colleague first sees the values that stand there now.`;

/** @param names of the workbook or the sheet that call us */
export const namesCall = (names: readonly string[]): string =>
  `${names.length === 1 ? "A name" : `${names.length} names`} of the workbook ${names.length === 1 ? "calls" : "call"} Retort and ${names.length === 1 ? "is" : "are"} in error without it: ${named(names)}. So is every cell that uses ${names.length === 1 ? "it" : "one"}.`;

export const onceRecalculated =
  "As soon as one of them calculates again, because an input was changed, a row was put in, or the program calculates what it opens, it shows #NAME?, and so does whatever is calculated from it. Saved like that, it often stays so with Retort too: the button below enters it again.";

/** @param line the words that a run sheet then shows */
export const runSheetSaysSo = (line: string): string =>
  `This run sheet notices. Once calculated again, losses between weighings follow new weights, for they need no function of Retort; shares rest on samples judged dry or finished and come out empty. What it cannot judge it calls not judged, accuses nobody, and its third line says: "${line}"`;

export const plainInstead = (calling: number, plain: number): string =>
  plain === calling
    ? "As plain cells all of them would go on calculating."
    : `As plain cells ${plain} of them would go on calculating; the others would keep their values and say so once an input changes.`;

export const mendFirst = (cells: readonly string[]): string =>
  `Not yet: ${named(cells)} ${cells.length === 1 ? "is" : "are"} broken on your own machine. Enter ${cells.length === 1 ? "it" : "them"} again below first.`;

export const nothingChanged = "Nothing was changed. To send it as it is, save the workbook and send that: every sheet of it travels along.";
