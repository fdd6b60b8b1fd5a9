import { tokenize, tokenTypes } from "@borgar/fx";
import { quotedSheet, unquotedSheet } from "../../../workbook/quotedSheet";

const NO_SUCH_CELL = "#REF!";

/** Sheets and names that are no longer there, in capitals. */
export interface Gone {
  readonly sheets: ReadonlySet<string>;
  readonly names: ReadonlySet<string>;
}

/** Whether a formula reads a sheet or a name that is gone. @param formula without "=" */
export const readsGone = (formula: string, gone: Gone): boolean => withoutGone(formula, gone) !== formula;

/** The formula with #REF! in place of what is gone, as spreadsheets write it. @param formula without "=" */
export function withoutGone(formula: string, gone: Gone): string {
  return tokenize(`=${formula}`)
    .map(({ type, value }) => {
      if (type === tokenTypes.REF_NAMED && gone.names.has(value.slice(value.lastIndexOf("!") + 1).toUpperCase())) return NO_SUCH_CELL;
      const isReference = type === tokenTypes.REF_RANGE || type === tokenTypes.REF_BEAM || type === tokenTypes.REF_NAMED;
      return isReference && sheetsIn(value).some((sheet) => gone.sheets.has(sheet)) ? NO_SUCH_CELL : value;
    })
    .join("")
    .slice(1);
}

/** The sheets before a "!", in capitals: one, or the first and last of several. A name in brackets is one of another file. */
function sheetsIn(reference: string): string[] {
  const mark = reference.lastIndexOf("!");
  if (mark === -1) return [];
  const written = reference.slice(0, mark);
  const plain = unquotedSheet(written);
  return plain.includes("[") ? [] : plain.toUpperCase().split(":");
}

/**
 * The formula with sheets under their new names. @param formula without "=" @param names new names by the old ones in capitals
 */
export function withSheetsRenamed(formula: string, names: ReadonlyMap<string, string>): string {
  return tokenize(`=${formula}`)
    .map(({ type, value }) => {
      const mark = value.lastIndexOf("!");
      const isReference = type === tokenTypes.REF_RANGE || type === tokenTypes.REF_BEAM || type === tokenTypes.REF_NAMED;
      const sheets = isReference ? sheetsIn(value) : [];
      if (!sheets.some((sheet) => names.has(sheet))) return value;
      const written = value.slice(0, mark);
      const plain = unquotedSheet(written).split(":");
      return `${quotedSheets(plain.map((sheet) => names.get(sheet.toUpperCase()) ?? sheet))}!${value.slice(mark + 1)}`;
    })
    .join("")
    .slice(1);
}

// A name that is letters, numbers and lines needs no quotation marks, unless it reads as a cell or a number.
const PLAIN = /^[\p{L}_][\p{L}\p{N}_.]*$/u;
const LIKE_A_CELL = /^[A-Z]{1,3}\d+$|^R\d*(?:C\d*)?$|^C\d*$/i;

const quotedSheets = (sheets: readonly string[]): string =>
  sheets.every((sheet) => PLAIN.test(sheet) && !LIKE_A_CELL.test(sheet)) ? sheets.join(":") : quotedSheet(sheets.join(":"));
