import { counted } from "../quoted";

// Words of the Share tab.

export const shareTabWords = {
  heading: "Share a sheet",
  intro: "For a colleague without the add-in. Your own sheet stays as it is: everything happens in a copy.",
  sheet: "Sheet to share",
  every: " Every sheet of the workbook, in one file",
  where: {
    legend: "Where the copy goes",
    file: "A file of its own",
    fileAbout: "The sheet and its calculation record, nothing else of your workbook.",
    workbook: "This workbook",
    workbookAbout: "Further sheets at its end. The sheet itself, and all others, travel along if you send the workbook.",
  },
  values: {
    heading: "As values",
    press: "Share as values",
    points: [
      "Every number, text, format and chart stays. Each formula gives way to the value it shows; boxes to fill in, prompts and lists go. A line in view says that nothing recalculates.",
      "The calculation record lists each formula as it was typed, its value and unit, what the function does and its source.",
    ],
  },
  plain: {
    heading: "As plain cells",
    press: "Share as plain cells",
    points: [
      "Goes on calculating without Retort: each of its functions is written out in built-in ones, which refuse what the function refuses.",
      "What cannot be written out keeps its value, is marked in a file of its own, and says that it is fixed as soon as an input of it is changed. The record lists both.",
    ],
  },
  asItIs: {
    heading: "As it is",
    press: "See what will happen",
    about:
      "Your colleague first sees your values. When a cell recalculates on their machine, because an input changed or just because a row was inserted, " +
      "it can turn to #NAME?. Saved like that, it often stays so even after the add-in is installed, until each formula is entered again.",
  },
  mend: {
    heading: "A workbook that came back",
    press: "Look for formulas to enter again",
    about:
      "Where a workbook went through a program without Retort, its functions may show #NAME? or stand under the names that files use. Such formulas, and no others, are entered again.",
  },
  show: "Show the copy",
  stop: "Stop",
  /** Said of both kinds in Excel, where a copy goes into this workbook. */
  undo: "Both sheets are made, or neither. In Excel, copying a sheet cannot be undone and clears the list of what can; to take it back, delete the new sheets.",
  refusal:
    "While anything still calculates, or one of its Retort functions shows an error, nothing is made and you are told which cells to see to; errors that are meant you can share as they are.",
} as const;

/** @param because why there is no file of its own, as a whole sentence @param made what was made instead */
export const inThisWorkbook = (because: string, made: string): string => `${because} So the copy was made in this workbook. ${made}`;

export const copyMade = (copy: string, record: string, cells: number): string => {
  const became = cells === 0 ? "No cell held a formula." : cells === 1 ? "One formula cell became a value." : `${cells} formula cells became values.`;
  return `Made "${copy}" and its record, "${record}". ${became}`;
};

export const plainCopyMade = (copy: string, record: string, cells: number, fixed: number): string =>
  `Made "${copy}" and its record, "${record}". ${counted(cells, "cell")} of Retort written in built-in functions, ${fixed === 0 ? "none" : String(fixed)} fixed.`;

export const copyInView = (copy: string, record: string): string => `"${copy}" is in view. Its record is "${record}".`;
