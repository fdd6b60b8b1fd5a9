import { generateRandomId, type ICellData, type IWorkbookData } from "@univerjs/core";
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
    return { name, data: { ...data, id: generateRandomId(), name, cellData: withLooks(cellData, styles) }, rules };
  });
}

type Rows = Readonly<Record<number, Readonly<Record<number, ICellData>>>>;

/** The cells with their looks in them, which a workbook keeps in a list of its own. */
function withLooks(rows: object, looks: IWorkbookData["styles"]): Record<number, Record<number, ICellData>> {
  const withLook = (cell: ICellData): ICellData => (typeof cell.s === "string" ? { ...cell, s: looks[cell.s] ?? null } : cell);
  return Object.fromEntries(
    Object.entries(rows as Rows).map(([row, cells]) => [
      row,
      Object.fromEntries(Object.entries(cells).map(([column, cell]) => [column, withLook(cell)])),
    ]),
  );
}
