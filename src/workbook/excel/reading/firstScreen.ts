import { cellAt, rangeOf } from "../../cellArea";
import { FIRST_SCREEN, type FirstScreen } from "../../OutOfView";
import { excelSupports } from "../excelReady";
import { withoutSheet } from "./readCells";

/** Which rows and columns of the first screen are hidden and which of its cells are merged, in one request. Merged areas need ExcelApi 1.13. */
export async function firstScreen(context: Excel.RequestContext, sheet: string): Promise<FirstScreen> {
  const worksheet = context.workbook.worksheets.getItem(sheet);
  const { rows, columns } = FIRST_SCREEN;
  const inRow = Array.from({ length: rows }, (_, row) => worksheet.getRange(cellAt(row, 0)).load("rowHidden"));
  const inColumn = Array.from({ length: columns }, (_, column) => worksheet.getRange(cellAt(0, column)).load("columnHidden"));
  const screen = worksheet.getRange(rangeOf({ row: 0, column: 0, rows, columns }));
  const merged = excelSupports("1.13") ? screen.getMergedAreasOrNullObject().load("address") : undefined;
  const sheets = context.workbook.worksheets.load("items/name");
  await context.sync();
  const places = (hidden: readonly boolean[]): number[] => hidden.flatMap((is, place) => (is ? [place] : []));
  return {
    hiddenRows: places(inRow.map(({ rowHidden }) => rowHidden)),
    hiddenColumns: places(inColumn.map(({ columnHidden }) => columnHidden)),
    merged: merged === undefined || merged.isNullObject ? [] : merged.address.split(",").map(withoutSheet),
    sheetNames: sheets.items.map(({ name }) => name),
  };
}
