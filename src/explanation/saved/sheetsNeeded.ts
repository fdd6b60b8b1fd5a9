import type { ReadBook } from "./ReadBook";

type ReadSheet = ReadBook["sheets"][number];

// Refers to cells that its text does not name.
const UNSEEN = /\b(?:INDIRECT|OFFSET)\(/i;
// Two names of 31 characters, quoted, and what may be written twice in them.
const LONGEST_NAMES = 130;
const BEFORE_NAMES = "(,;+-*/&=<>^ \n";

/**
 * The sheets that some of a book's sheets are calculated from, themselves among them, in small letters. Better one too many than one missing: a
 * sheet counts as soon as its name stands in a formula, a rule for colouring, or a defined name that does.
 */
export function sheetsNeeded({ sheets, names, tables, colouring }: ReadBook, of: readonly Pick<ReadSheet, "name">[]): ReadonlySet<string> {
  const needed = new Set<string>();
  const everything = new Set(sheets.map(({ name }) => name.toLowerCase()));
  const ahead = of.map(({ name }) => name.toLowerCase());
  for (let name = ahead.pop(); name !== undefined; name = ahead.pop()) {
    if (needed.has(name)) continue;
    needed.add(name);
    const ofRules = colouring.filter(({ sheet }) => sheet.toLowerCase() === name).flatMap((rule) => rule.formulas);
    const formulas = [formulasOn(sheets.find((one) => one.name.toLowerCase() === name)), ...ofRules].join("\n").toLowerCase();
    const text = withNames(formulas, names);
    if (UNSEEN.test(text) || readsSeveral(text)) return everything;
    for (const other of everything) if (!needed.has(other) && text.includes(other.replaceAll("'", "''"))) ahead.push(other);
    for (const table of tables) if (text.includes(table.name.toLowerCase())) ahead.push(table.sheet.toLowerCase());
  }
  return needed;
}

const formulasOn = (sheet: ReadSheet | undefined): string =>
  (sheet?.reading.rows ?? []).flatMap((row) => row.flatMap(({ formula }) => (formula === "" ? [] : [formula]))).join("\n");

/** Formulas with those of every name that stands in them, or in one of those. */
function withNames(formulas: string, names: ReadBook["names"]): string {
  let text = formulas;
  for (const left = [...names]; ;) {
    const found = left.findIndex(({ name }) => text.includes(name.toLowerCase()));
    if (found === -1) return text;
    text += `\n${left.splice(found, 1)[0]?.formula.toLowerCase() ?? ""}`;
  }
}

/** Whether a reference goes through every sheet between two: Tin1:Tin3!A1. */
function readsSeveral(text: string): boolean {
  for (let mark = text.indexOf("!"); mark !== -1; mark = text.indexOf("!", mark + 1)) {
    const before = text.slice(Math.max(0, mark - LONGEST_NAMES), mark);
    const from = before.endsWith("'")
      ? before.lastIndexOf("'", before.length - 2)
      : Math.max(...[...BEFORE_NAMES].map((one) => before.lastIndexOf(one)));
    if (before.slice(from + 1).includes(":")) return true;
  }
  return false;
}
