import { tokenize, tokenTypes } from "@borgar/fx";
import { quotedSheet, unquotedSheet } from "./quotedSheet";

const REFERENCES: readonly string[] = [
  ...[tokenTypes.REF_RANGE, tokenTypes.REF_BEAM, tokenTypes.REF_TERNARY, tokenTypes.REF_NAMED, tokenTypes.REF_STRUCT],
];

/** A cell formula with its references to one sheet made to another, whose name stands in quotation marks then. Texts stay. */
export const withSheetRenamed = (formula: string, from: string, to: string): string => withSheetAs(formula, from, `${quotedSheet(to)}!`);

/** A cell formula for the sheet itself: its references to it go without its name. */
export const withoutSheetName = (formula: string, sheet: string): string => withSheetAs(formula, sheet, "");

function withSheetAs(formula: string, from: string, after: string): string {
  const name = from.toLowerCase();
  const written = name.replaceAll("'", "''");
  const text = formula.toLowerCase();
  if (!text.includes(`${written}!`) && !text.includes(`${written}'!`)) return formula;
  return tokenize(formula)
    .map(({ type, value }) => {
      const end = REFERENCES.includes(type) ? value.lastIndexOf("!") : -1;
      return end !== -1 && sheetIn(value.slice(0, end)) === name ? `${after}${value.slice(end + 1)}` : value;
    })
    .join("");
}

const sheetIn = (prefix: string): string => unquotedSheet(prefix).toLowerCase();
