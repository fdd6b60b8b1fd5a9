import { generateRandomId, type ICellData, type IStyleData, type IWorkbookData } from "@univerjs/core";
import type { GridEngine } from "../GridEngine";
import type { GridSheet } from "../writing/GridSheet";

/** Every open sheet as it would be put into a workbook again, in plain data that can be stored. */
export function heldSheets({ book }: GridEngine): GridSheet[] {
  const { sheets, styles } = book.save();
  return book.getSheets().map((sheet) => {
    const { cellData = {}, ...data } = sheets[sheet.getSheetId()] ?? {};
    const name = sheet.getSheetName();
    const rules = sheet.getDataValidations().map(({ rule }) => structuredClone(rule));
    // An id of its own, so that it can come in while the sheet it was taken from is open.
    const lines = { rowData: withLook(data.rowData ?? {}, styles), columnData: withLook(data.columnData ?? {}, styles) };
    return { name, data: { ...data, ...lines, id: generateRandomId(), name, cellData: withLooks(cellData, styles) }, rules };
  });
}

/** The cells with their looks in them, which a workbook keeps in a list of its own. */
const withLooks = (rows: object, looks: Looks): Record<number, Record<number, ICellData>> =>
  Object.fromEntries(Object.entries(rows).map(([row, cells]) => [row, withLook(cells as object, looks)]));

type Looks = IWorkbookData["styles"];

/** The same for the cells of a row, or for whole rows or columns. */
const withLook = (line: object, looks: Looks): Record<number, object> =>
  Object.fromEntries(
    Object.entries(line as Record<number, { s?: string | IStyleData | null }>).map(([place, one]) => [
      place,
      typeof one.s === "string" ? { ...one, s: looks[one.s] ?? null } : one,
    ]),
  );
