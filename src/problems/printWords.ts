import { counted } from "./quoted";

/** Said on the paper and in the page about printing a sheet. */
export const nothingToPrint = "This sheet is blank, so there is nothing to print. Show a sheet that holds something, then print.";

export const notAllPrinted = (rows: number, of: number): string =>
  `Only the first ${counted(rows, "row")} of ${of} are on this print. Save the workbook and print it from a spreadsheet for the rest.`;
