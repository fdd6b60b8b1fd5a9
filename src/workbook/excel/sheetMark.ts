import type { UnfinishedSheet } from "../Workbook";

// A name that belongs to one sheet alone (ExcelApi 1.4): it is made in the same request as the sheet, is saved with the
// workbook, and can be undone together with the sheet. A duplicate that somebody makes of a marked sheet carries the mark too.
const MARK = "Retort_unfinished";

/** A sheet that carries a mark, and which attempt put it there. */
export interface MarkedSheet extends UnfinishedSheet {
  readonly token: string;
}

const LETTERS_AND_DIGITS = 36;

/** Tells one attempt to make a sheet from every other, also from those of other people in the same workbook. */
export const newToken = (): string => [Date.now(), Math.random()].map((part) => part.toString(LETTERS_AND_DIGITS).replace("0.", "")).join("-");

/** Marks a sheet just made as unfinished. */
export function mark(worksheet: Excel.Worksheet, token: string): void {
  worksheet.names.add(MARK, `="${token}"`).visible = false;
}

export const unmark = (worksheet: Excel.Worksheet): void => worksheet.names.getItem(MARK).delete();

/** Every sheet of the workbook, with the token of its mark, "" where it has none; two requests. */
export async function sheetsWithMarks(context: Excel.RequestContext): Promise<readonly MarkedSheet[]> {
  const { worksheets } = context.workbook;
  worksheets.load("items/id,items/name");
  await context.sync();
  const marks = worksheets.items.map((sheet) => sheet.names.getItemOrNullObject(MARK).load("value"));
  await context.sync();
  return worksheets.items.map(({ id, name }, index) => ({ id, name, token: tokenIn(marks[index]) }));
}

const tokenIn = (item: Excel.NamedItem | undefined): string => (item === undefined || item.isNullObject ? "" : String(item.value));
