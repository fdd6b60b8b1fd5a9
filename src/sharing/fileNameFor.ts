import type { FileWanted } from "./shareInFile";

// What a file's name cannot hold in one system or another.
const NOT_IN_NAMES = /[<>:"/\\|?*]/g;

/** A name for a shared file: after its sheet where there is one, and what became of it. */
export function fileNameFor({ as, sheets: [first, ...further] }: FileWanted): string {
  const about = first !== undefined && further.length === 0 ? first.sheet.replace(NOT_IN_NAMES, "_") : "workbook";
  return `${about} ${as === "values" ? "values" : "plain cells"}.xlsx`;
}
