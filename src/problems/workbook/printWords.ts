import { counted } from "../quoted";

/** Said on the paper and in the page about printing a sheet. */
export const nothingToPrint = "This sheet is blank, so there is nothing to print. Show a sheet that holds something, then print.";

/** At the foot of each page: what the day there is of. A spreadsheet writes its own day in an order that is read in two ways. */
export const footDays = {
  printed: (day: string): string => `printed ${day}`,
  saved: (day: string): string => `file saved ${day}`,
  setUp: (day: string): string => `set up ${day}`,
} as const;

export const notAllPrinted = (rows: number, of: number): string =>
  `Only the first ${counted(rows, "row")} of ${of} are on this print. Save the workbook and print it from a spreadsheet for the rest.`;
