import { BooleanNumber, WrapStrategy, type IStyleData } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { wrappedLines } from "../../wrappedLines";
import type { GridEngine } from "../GridEngine";
import { readCell } from "../reading/readCell";
import { ROW_HEIGHT } from "./worksheetData";

// Wide estimates for the grid's own font size, 11 points, measured with a wide font; a narrower font leaves some room.
const PIXELS_A_CHARACTER = 8;
const PIXELS_A_BOLD_CHARACTER = 9.5;
const PIXELS_A_LINE = 18;
const PADDING = 4;
// Room for one line of text, from the tallest letter to the deepest.
const PIXELS_A_POINT = 1.8;

/** Makes rows as high as wrapped or large text needs. The engine only does so for text typed by hand. */
export function fitRowHeights(engine: GridEngine, sheet: FWorksheet): void {
  const heights = new Map<number, number>();
  const cells = sheet.getSheet().getCellMatrix();
  cells.forValue((row, column, cell) => {
    const look = typeof cell?.s === "string" ? sheet.getWorkbook().getStyles().get(cell.s) : cell?.s;
    const large = (look?.fs ?? 0) * PIXELS_A_POINT;
    const wrapped =
      look?.tb === WrapStrategy.WRAP ? wrappedHeight(readCell(engine, sheet, row, column).shown, look, sheet.getColumnWidth(column)) : 0;
    heights.set(row, Math.max(heights.get(row) ?? 0, large, wrapped));
  });
  const planned = sheet.getSheet().getRowManager().getRowData();
  // A row whose height was planned keeps it.
  for (const [row, height] of heights)
    if (height > ROW_HEIGHT && planned[row]?.ia !== BooleanNumber.FALSE) sheet.setRowHeightsForced(row, 1, Math.ceil(height));
}

function wrappedHeight(text: string, look: IStyleData, columnWidth: number): number {
  const perCharacter = look.bl === BooleanNumber.TRUE ? PIXELS_A_BOLD_CHARACTER : PIXELS_A_CHARACTER;
  const lines = wrappedLines(text, Math.max(1, Math.floor((columnWidth - PADDING) / perCharacter)));
  return lines === 1 ? ROW_HEIGHT : lines * PIXELS_A_LINE + PADDING;
}
