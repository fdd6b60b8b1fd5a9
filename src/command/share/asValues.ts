import { valuesName } from "../../sharing/copyNames";
import type { RulesPut } from "../../sharing/plain/plainRules";
import { leaveValues, type ValuesMade } from "../../xlsx/handedOn/valuesFile";
import type { BookSheet } from "../book/Book";
import type { OpenBook } from "../book/openBook";
import { packing, recording } from "../words/refusals";
import { writeRecalculated } from "./writeRecalculated";

/**
 * Turns the book into copies of some of its sheets in which values stand in place of formulas, each beside its calculation record, and nothing
 * else. The copies say what they are, take no entries and look like it.
 * @param recalculated true where the values beside the formulas are ours and not those of the file
 */
export async function asValues(
  book: OpenBook,
  shared: readonly BookSheet[],
  { day, recalculated }: { readonly day: string; readonly recalculated: boolean },
): Promise<{ readonly made: readonly ValuesMade[]; readonly put: RulesPut }> {
  if (recalculated) await writeRecalculated(book, shared);
  const taken: string[] = [];
  const copies = shared.map(({ name, reading }) => ({ reading, copy: valuesName(name, taken) }));
  const made = await leaveValues(book.file, copies, { date: day, recording: (formulas) => book.progress(recording(formulas)) });
  book.progress(packing);
  return made;
}
