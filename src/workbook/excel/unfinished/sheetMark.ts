import type { UnfinishedSheet } from "../../Workbook";

// A name that belongs to one sheet alone (ExcelApi 1.4): it is made in the same request as the sheet, is saved with the
// workbook, and can be undone together with the sheet. What follows these words tells the sheets of one attempt from all others,
// so that a request for the name fails on any other sheet. A duplicate that somebody makes of a marked sheet carries the mark too.
const MARK = "Retort_unfinished";
const VALUE = '="begun by Retort and not finished"';
const RADIX = 36;

/** Tells one attempt to make sheets from every other, also from those of other people in the same workbook. */
export const newToken = (): string => [Date.now(), Math.random()].map((part) => part.toString(RADIX).replace("0.", "")).join("_");

/** The mark of one of the sheets that an attempt makes. */
export const markOf = (token: string, sheet: number): string => `${MARK}_${token}_${sheet}`;

/** When the attempt behind a mark began, by the clock of whoever made it; undefined for marks of version 0.2.0, which do not say. */
export function begunAt(mark: string): number | undefined {
  const [, time] = /^Retort_unfinished_([0-9a-z]+)_/i.exec(mark) ?? [];
  return time === undefined ? undefined : parseInt(time, RADIX);
}

/** Marks a sheet just made as unfinished. */
export function putMark(worksheet: Excel.Worksheet, mark: string): void {
  worksheet.names.add(mark, VALUE).visible = false;
}

export const takeMark = (worksheet: Excel.Worksheet, mark: string): void => worksheet.names.getItem(mark).delete();

/** Makes whatever follows in the same request depend on the mark: where the sheet does not carry it, Excel stops with ItemNotFound. */
export function holdToMark(worksheet: Excel.Worksheet, mark: string): void {
  worksheet.names.getItem(mark).load("name");
}

export type SheetThere = Pick<UnfinishedSheet, "id" | "name">;

/** Every sheet of the workbook; one request. */
export async function sheetsThere(context: Excel.RequestContext): Promise<readonly SheetThere[]> {
  const sheets = context.workbook.worksheets.load("items/id,items/name");
  await context.sync();
  return sheets.items.map(({ id, name }) => ({ id, name }));
}

/** Asks which marks a sheet carries. @returns them, once the request has been answered */
export function askForMarks(worksheet: Excel.Worksheet): () => readonly string[] {
  const names = worksheet.names.load("items/name");
  return () => names.items.map(({ name }) => name).filter((name) => name.startsWith(MARK));
}
