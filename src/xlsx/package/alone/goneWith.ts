import { readsGone, type Gone } from "../sheets/namedSheets";
import type { DefinedName, ListedSheet, Outline } from "../workbookOutline";

/** Names go that a sheet alone knew, that stand for cells of one, or for another name that goes. */
export function goneWith({ sheets, names }: Outline, going: readonly ListedSheet[]): Gone {
  const goneSheets = new Set(going.map(({ name }) => name.toUpperCase()));
  const isGoing = (sheet: number | undefined): boolean => sheet !== undefined && goneSheets.has(sheets[sheet]?.name.toUpperCase() ?? "");
  const goneNames = new Set<string>();
  for (let known = -1; known < goneNames.size;) {
    known = goneNames.size;
    for (const { name, refersTo, sheet } of names) {
      if (isGoing(sheet) || /^_xlnm\./i.test(name)) continue;
      if (readsGone(refersTo, { sheets: goneSheets, names: goneNames })) goneNames.add(name.toUpperCase());
    }
  }
  return { sheets: goneSheets, names: goneNames };
}

/** What goes once these sheets alone are kept. */
export function goneBeside(outline: Outline, kept: readonly string[]): Gone {
  const wanted = new Set(kept.map((name) => name.toLowerCase()));
  return goneWith(outline, outline.sheets.filter(({ name }) => !wanted.has(name.toLowerCase()))); // prettier-ignore
}

/** True for a name that goes with them, or belongs to one of them. */
export function isNameGone({ sheets }: Outline, { sheet, refersTo }: DefinedName, gone: Gone): boolean {
  return (sheet !== undefined && gone.sheets.has(sheets[sheet]?.name.toUpperCase() ?? "")) || readsGone(refersTo, gone);
}
