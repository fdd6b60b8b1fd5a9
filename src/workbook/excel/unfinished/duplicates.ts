import { idOf, type Attempt } from "./Attempt";
import { inExcel } from "../inExcel";
import { askForMarks, takeMark, type SheetThere } from "./sheetMark";

/**
 * Asks for sheets that are neither of the attempt nor were there before it.
 * @param seen sheets whose marks have been looked at
 * @returns their ids, once the request has been answered
 */
export function askForStrangers(context: Excel.RequestContext, attempt: Attempt, seen: readonly SheetThere[] = []): () => readonly string[] {
  const sheets = context.workbook.worksheets.load("items/id");
  return () => {
    const known = new Set([...[...attempt.before, ...seen].map(({ id }) => id), ...attempt.sheets.map(idOf)]);
    return sheets.items.map(({ id }) => id).filter((id) => !known.has(id));
  };
}

/** A duplicate that somebody made of a sheet under way carries its mark, and is not ours to offer for removal. */
export async function unmarkDuplicates({ sheets }: Attempt, strangers: readonly string[]): Promise<void> {
  if (strangers.length === 0) return;
  await inExcel(async (context) => {
    const asked = strangers.map((id) => {
      const worksheet = context.workbook.worksheets.getItem(id);
      return { worksheet, marks: askForMarks(worksheet) };
    });
    await context.sync();
    for (const { worksheet, marks } of asked)
      marks()
        .filter((mark) => sheets.some((sheet) => sheet.mark === mark))
        .forEach((mark) => takeMark(worksheet, mark));
    await context.sync();
    // The sheets are made: where this does not go well, the mark is met as one that may be a duplicate's.
  }).catch(() => undefined);
}
