import { tokenize, tokenTypes } from "@borgar/fx";
import { quotedSheet } from "./quotedSheet";

const REFERENCES: readonly string[] = [
  ...[tokenTypes.REF_RANGE, tokenTypes.REF_BEAM, tokenTypes.REF_TERNARY, tokenTypes.REF_NAMED, tokenTypes.REF_STRUCT],
];

const quoted = (sheet: string): string => `${quotedSheet(sheet)}!`;

/** A cell formula with its references to one sheet, whose name stands in quotation marks, made to another. Texts stay. */
export function withSheetRenamed(formula: string, from: string, to: string): string {
  const [before, after] = [quoted(from), quoted(to)];
  if (!formula.includes(before)) return formula;
  return tokenize(formula)
    .map(({ type, value }) => (REFERENCES.includes(type) && value.startsWith(before) ? `${after}${value.slice(before.length)}` : value))
    .join("");
}
