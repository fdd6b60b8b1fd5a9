import { counted } from "../quoted";

// What a shared copy says of itself, and what the pane says of one.

/** @param date of sharing, as printed */
export const valuesBanner = (date: string): string => `Values of ${date}; does not recalculate`;

/** @param sized how many formulas are fixed as soon as their answer would fill other cells */
export const plainBanner = (date: string, fixed: number, sized = 0): string =>
  `Plain cells of ${date}; lives without Retort; ${fixed === 0 ? "no cell" : counted(fixed, "cell")} fixed${sized === 0 ? "" : `, ${sized} more once the size of an answer changes`}`;

/** The same behind the title of a run sheet, which stays. */
export const plainBannerBeside = (title: string, date: string, fixed: number, sized = 0): string =>
  `${title}: plain cells of ${date}, ${fixed === 0 ? "none" : fixed} fixed${sized === 0 ? "" : `, ${sized} with their size`}`;

export const valuesFileMade = (file: string, cells: number): string =>
  `Made ${file}: ${cells === 0 ? "no cell held a formula" : `${counted(cells, "formula cell")} became ${cells === 1 ? "a value" : "values"}`}. Your own workbook is as it was.`;

export const plainFileMade = (file: string, cells: number, fixed: number): string =>
  `Made ${file}: ${counted(cells, "cell")} of Retort written in built-in functions, ${fixed === 0 ? "none" : String(fixed)} fixed. Your own workbook is as it was.`;

export const readingSheet = (sheet: string, at: number, of: number): string => `Reading ${sheet} (${at} of ${of})`;
export const writingFile = "Writing the file";
export const makingCopy = "Making the copy and its record";
export const sharingStopped = "Stopped. Nothing was made.";

/** What the calculation record says of a fixed cell. @param why as WHY_FIXED has it */
export const fixedBecause = (why: string): string => `fixed at its value: ${why}`;

/** What the record and the pane say of rules and names that call Retort and stand in no cell. */
export const rulesOfSheet = {
  heading: "Rules and names",
  about: "No cell: a rule of the sheet, a name of the workbook or a link or chart that called Retort or read a sheet which is not in this file.",
} as const;
export const RULE_KINDS = {
  ...{ colouring: "colours cells", entry: "checks entries", name: "defined name" },
  ...{ link: "link", smallChart: "small chart in a cell", series: "series of a chart", chart: "chart", pivot: "pivot table" },
  ...{ slicer: "slicer or timeline", query: "query" },
} as const;
export const takenOutBecause = (why: string): string => `taken out: ${why}`;

// As many as a message can hold; the record lists all.
const MOST_NAMED = 3;
const firstFew = (what: readonly string[]): string =>
  `${what.slice(0, MOST_NAMED).join(", ")}${what.length > MOST_NAMED ? ` and ${what.length - MOST_NAMED} more` : ""}`;

/** @param taken each "Tray!D1:D9 (colours cells)" as whatTaken says it */
export const takenOutToo = (taken: readonly string[]): string =>
  taken.length === 0
    ? ""
    : `Taken out, because ${taken.length === 1 ? "it calls" : "they call"} Retort and ${taken.length === 1 ? "has" : "have"} no plain form: ${firstFew(taken)}. The record says why.`;

/** @param taken as takenOutToo has it */
export const takenOutAlone = (taken: readonly string[]): string =>
  taken.length === 0
    ? ""
    : `Taken out, because ${taken.length === 1 ? "it reads or leads to a sheet that is" : "they read or lead to sheets that are"} not in the file: ${firstFew(taken)}.`;

/** @param taken as takenOutToo has it */
export const takenOutConnected = (taken: readonly string[]): string =>
  taken.length === 0
    ? ""
    : `Taken out, because ${taken.length === 1 ? "it reads" : "they read"} through a connection, and the file carries none: ${firstFew(taken)}. What ${taken.length === 1 ? "it" : "they"} showed stays as values.`;

/** @param taken as takenOutToo has it */
export const takenOutStale = (taken: readonly string[]): string =>
  taken.length === 0
    ? ""
    : `Taken out, because ${taken.length === 1 ? "it compares" : "they compare"} entries with a cell that may come to be fixed: ${firstFew(taken)}.`;

/** @param rules that call us and stay as they are */
export const rulesStillCall = (copy: string, rules: number): string =>
  rules === 0
    ? ""
    : `${counted(rules, "rule")} of "${copy}" for colouring or entries ${rules === 1 ? "calls" : "call"} Retort and ${rules === 1 ? "does" : "do"} nothing without it. In a file of its own ${rules === 1 ? "it is" : "they are"} written in built-in functions or taken out.`;
/** @param unread what could not be read, or not all of it */
export const besideUnread = (sheet: string, unread: readonly ("names" | "colouring" | "entry")[]): string => {
  if (unread.length === 0) return "";
  const rules = (["colouring", "entry"] as const).filter((kind) => unread.includes(kind)).map((kind) => (kind === "entry" ? "entries" : kind));
  const what = [
    ...(unread.includes("names") ? ["names of the workbook"] : []),
    ...(rules.length === 0 ? [] : [`rules of "${sheet}" for ${rules.join(" or ")}`]),
  ];
  return `Whether ${what.join(" or ")} call Retort could not be read in full; ${rules.length === 0 ? "such names are in error" : "such rules do nothing"} without it.`;
};
/** @param names of the workbook that call us, of which the copy's cells use none */
export const namesStay = (copy: string, names: readonly string[]): string =>
  names.length === 0
    ? ""
    : `${names.length === 1 ? "A name" : `${names.length} names`} of the workbook ${names.length === 1 ? "calls" : "call"} Retort and ${names.length === 1 ? "stays as it is" : "stay as they are"}: ${firstFew(names)}. No formula of "${copy}" uses ${names.length === 1 ? "it" : "them"}.`;
/** What the record says of such a name. */
export const nameStays = "stays as it is, in error without Retort: what used it on this copy does without";

export const whatTaken = (where: string, what: keyof typeof RULE_KINDS): string => `${where} (${RULE_KINDS[what]})`;

const JOINED = "Alike formulas are told once, as that of the first cell. A formula that goes on in the next rows is one: join them.";

/** What the calculation record says at its top. */
export const aboutValues = (sheet: string, copy: string): string =>
  `How the values on "${copy}" came about. They were calculated ${sheet === copy ? "before it was shared" : `on "${sheet}"`} and do not change any more.`;
export const aboutPlainCells = (copy: string): string =>
  `How the cells on "${copy}" are calculated. They go on calculating without Retort; a fixed one says so once an input of it is changed.`;
export const checkByHand = (copy: string): string =>
  `To check by hand: put the numbers on "${copy}" into the arithmetic below, or type a built-in form into a blank cell of that sheet. ${JOINED}`;
export const formsOnCopy = `The built-in form is what stands in the cell now, or why its value does. ${JOINED}`;
export const shownRounded = "A sheet may show a value rounded; it was calculated with all its digits.";

/** What a button says that shares all the same. */
export const shareAllTheSame = { asShown: "Share the values shown now", withErrors: "Share the cells in error as they are" } as const;
