import { tokenize, tokenTypes } from "@borgar/fx";

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
  const plain = written.startsWith("'") ? written.slice(1, -1).replaceAll("''", "'") : written;
  return plain.includes("[") ? [] : plain.toUpperCase().split(":");
}
