import { InputProblem } from "../InputProblem";
import { quoted } from "../quoted";

/** A sheet of which no report can be made. */
export const nothingToReport = (sheet: string): InputProblem =>
  new InputProblem(
    "sheet",
    `${quoted(sheet)} is no run sheet, and no cell on it calls a Retort function`,
    "Show the sheet with the run or the calculations, then make its report.",
  );

/** Where neither a file nor the clipboard is to be had. */
export const reportNotCopied = (): InputProblem =>
  new InputProblem("report", "this program lets the pane write to no clipboard", "Open the workbook in the local workbook or in Excel on the web.");

/** Said by the pane about a report it made. */
export const reportWordsInPane = {
  heading: "Report",
  about: "One or two pages to print or to send: the run in view, or the calculations of any other sheet. A file that needs nothing else.",
  make: "Make the report",
  copy: "Copy the report",
  made: (file: string): string =>
    `Made ${quoted(file)}. Open it in a browser to print it. Where no file was saved, as in some desktop programs, use the link, or copy the report.`,
  save: (file: string): string => `Save ${file}`,
  copied: "Copied as HTML. Paste it into a text editor and save it with the ending .html, then open it in a browser.",
} as const;
