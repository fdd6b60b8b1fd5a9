import { sheetNameBlank, sheetNameMarks, sheetNameReserved } from "../problems/workbook/workbookProblems";
import { WorkbookProblem } from "./Workbook";

/** Excel specifications and limits, “Worksheet name length”. */
export const LONGEST_SHEET_NAME = 31;
const FORBIDDEN = /[\\/?*[\]:]|^'|'$/;
// The sheet that change tracking makes has this name in the English version.
const RESERVED = "history";

/**
 * The wanted name when it is free, else numbered: "Run", "Run (2)", "Run (3)". A long name is cut so that it and its
 * number fit into 31 characters. Letter case does not tell names apart.
 * @throws WorkbookProblem when the name is blank, reserved or holds a mark that no sheet name may hold
 */
export function freeSheetName(wanted: string, taken: readonly string[]): string {
  const name = wanted.trim();
  if (name === "") throw new WorkbookProblem(sheetNameBlank);
  if (FORBIDDEN.test(name)) throw new WorkbookProblem(sheetNameMarks(name));
  if (name.toLowerCase() === RESERVED) throw new WorkbookProblem(sheetNameReserved(name));
  const inUse = new Set(taken.map((other) => other.toLowerCase()));
  for (let number = 1; ; number++) {
    const candidate = withEnding(name, number === 1 ? "" : ` (${number})`);
    if (!inUse.has(candidate.toLowerCase())) return candidate;
  }
}

/** A free name for a sheet made beside another one: the other's name and an ending, cut to fit. Files hold names that Excel would refuse. */
export const freeNameBeside = (sheet: string, ending: string, taken: readonly string[]): string =>
  freeSheetName(withEnding(withoutMarks(sheet), ending), taken);

/** Says at the front, where no cut can take it away, that the copy cannot be used yet. */
export const unfinishedCopyName = (sheet: string, taken: readonly string[]): string =>
  freeSheetName(withEnding(`Unfinished copy of ${withoutMarks(sheet)}`, ""), taken);

const IN_PLACE: Readonly<Record<string, string>> = { "[": "(", "]": ")" };

/** A name with nothing in it that no sheet name may hold. */
const withoutMarks = (name: string): string => name.replace(/[\\/?*[\]:\p{Cc}]/gu, (mark) => IN_PLACE[mark] ?? "-").replace(/^[\s']+/, "");

/** Cut by whole characters: half of a surrogate pair is no character. A cut may not leave an apostrophe at the end. */
export function withEnding(name: string, ending: string): string {
  let kept = "";
  for (const character of name) {
    if (kept.length + character.length + ending.length > LONGEST_SHEET_NAME) break;
    kept += character;
  }
  while (/[\s']$/.test(kept)) kept = kept.slice(0, -1);
  return `${kept}${ending}`;
}
