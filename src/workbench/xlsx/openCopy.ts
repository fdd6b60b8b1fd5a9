import type { GridName } from "../../workbook/grid/writing/definedNames";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { replaceSheets, type GridSheet } from "../../workbook/grid/writing/GridSheet";
import type { FileOrigins, OpenedFile } from "./inPlace/OpenedFile";
import { openFile } from "./openXlsx";

/** Sheets as they were held in a page, with where in an opened file they come from. */
export interface CopyOfFile {
  readonly sheets: readonly GridSheet[];
  readonly names: readonly GridName[];
  readonly origins: FileOrigins;
}

/**
 * Opens a file and puts sheets that come from it in place of its own, as if they had been changed so since: they are saved in place, and what the
 * file says of formulas that are not calculated here holds on.
 * @returns what openFile returns
 */
export async function openCopy(
  engine: GridEngine,
  content: Uint8Array<ArrayBuffer>,
  { sheets, names, origins }: CopyOfFile,
): Promise<{ readonly said: readonly string[]; readonly opened: OpenedFile }> {
  const whole = await openFile(engine, content);
  const ids = new Map(engine.book.getSheets().map((sheet) => [sheet.getSheetName(), sheet.getSheetId()]));
  // The file knows its sheets by their ids, which no two can have at the same time.
  await replaceSheets(engine, [BLANK]);
  const under = (sheet: GridSheet, id: string | undefined): GridSheet => (id === undefined ? sheet : { ...sheet, data: { ...sheet.data, id } });
  await replaceSheets(
    engine,
    sheets.map((sheet, place) => under(sheet, ids.get(origins.sheets[place] ?? ""))),
    names,
  );
  whole.opened.sayMoved(origins.moved);
  return whole;
}

const BLANK: GridSheet = { name: "Blank", data: {}, rules: [] };
