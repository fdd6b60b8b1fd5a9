import { tokenize, tokenTypes } from "@borgar/fx";
import type { NameReading } from "../../sharing/plain/reading/PlainReading";
import { holdsCall } from "../../sharing/findCalls";
import type { RangeReading } from "../../workbook/Workbook";

interface Sheet {
  readonly name: string;
  readonly reading: RangeReading;
  /** The formulas of its rules for colouring and entries. */
  readonly rules: readonly string[];
}

/**
 * The sheets that call our functions other than in a formula of a cell: in a rule for colouring or for entries, or through a defined name, in cells or
 * rules. Where nothing but names calls us, the sheet that a name belongs to, or for a name of the workbook every sheet.
 */
export function callsBeside(sheets: readonly Sheet[], names: readonly NameReading[]): ReadonlySet<string> {
  const calling = callingNames(names);
  const isOurs = (formula: string): boolean => holdsCall(formula) || usesOneOf(formula, calling);
  const found = sheets.filter(({ rules, reading }) => rules.some(isOurs) || (calling.size > 0 && reading.rows.flat().some(({ formula }) => usesOneOf(formula, calling)))); // prettier-ignore
  const isCalled = found.length > 0 || sheets.some(({ reading }) => reading.rows.flat().some(({ formula }) => holdsCall(formula)));
  if (isCalled || calling.size === 0) return new Set(found.map(({ name }) => name));
  const owners = names.filter(({ name }) => calling.has(name.toUpperCase())).map(({ sheet }) => sheet);
  return new Set(owners.some((owner) => owner === undefined) ? sheets.map(({ name }) => name) : owners.flatMap((owner) => owner ?? []));
}

/** Names that call us, themselves or through others, in capitals. */
function callingNames(names: readonly NameReading[]): ReadonlySet<string> {
  const calling = new Set<string>();
  for (let known = -1; known < calling.size;) {
    known = calling.size;
    for (const { name, formula } of names) {
      const text = formula.startsWith("=") ? formula : `=${formula}`;
      if (holdsCall(text) || usesOneOf(text, calling)) calling.add(name.toUpperCase());
    }
  }
  return calling;
}

/** Reading a formula token by token takes most of the time of long books, and most name nothing. */
function usesOneOf(formula: string, names: ReadonlySet<string>): boolean {
  if (formula === "" || names.size === 0) return false;
  const text = formula.toUpperCase();
  if (![...names].some((name) => text.includes(name))) return false;
  return tokenize(formula).some(
    ({ type, value }) =>
      (type === tokenTypes.REF_NAMED || type === tokenTypes.FUNCTION) && names.has(value.slice(value.lastIndexOf("!") + 1).toUpperCase()),
  );
}
