import { holdsCall } from "../../sharing/findCalls";
import type { BookSheet } from "../book/Book";
import { sheetCalled, sheetsOf } from "../book/Book";
import { contentOf } from "../files/bookFile";
import { Refusal } from "../Refusal";
import { DONE, noCallsAtAll, noCallsOfOurs } from "../words/refusals";

/** In its cells, its rules or the names that they use. */
export const hasCalls = ({ reading, callsBeside }: BookSheet): boolean =>
  callsBeside || reading.rows.some((row) => row.some(({ formula }) => holdsCall(formula)));

/**
 * The sheets that are shared: those named, else every sheet in view with a call of ours.
 * @throws Refusal for a name that no sheet has, and where there is nothing to share
 */
export function sharedSheets(
  book: { readonly sheets: readonly BookSheet[] },
  named: readonly string[],
  command: keyof typeof DONE = "share",
): readonly BookSheet[] {
  if (named.length > 0) return [...new Set(named.map((name) => sheetCalled(book, name)))];
  const found = book.sheets.filter((sheet) => !sheet.isHidden && hasCalls(sheet));
  if (found.length === 0) throw new Refusal(noCallsOfOurs(DONE[command]));
  return found;
}

/**
 * Looks first of all whether the sheets named are there: what else is wrong may come of a slip in the name.
 * @throws Refusal
 */
export async function refuseUnknownSheets(path: string, named: readonly string[]): Promise<void> {
  if (named.length === 0) return;
  const sheets = await sheetsOf(await contentOf(path));
  for (const name of named) sheetCalled({ sheets }, name);
}

/** Every sheet with a call of ours, hidden ones too. @throws Refusal where there is none */
export function withCalls(book: { readonly sheets: readonly BookSheet[] }): readonly BookSheet[] {
  const found = book.sheets.filter(hasCalls);
  if (found.length === 0) throw new Refusal(noCallsAtAll);
  return found;
}
