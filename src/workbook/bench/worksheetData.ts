import type { ICellData, IObjectMatrixPrimitiveType, IWorksheetData } from "@univerjs/core";
import { cellArea } from "../cellArea";
import type { PlannedCell, SheetPlan } from "../SheetPlan";
import { cellData } from "./cellData";
import { gridStyle } from "./gridStyle";

/** Room to go on working below and beside what is planned. */
const ROWS = 200;
const COLUMNS = 26;
// A column of n characters is 7n + 5 pixels wide in the file format's default font (ECMA-376 Part 1, 18.3.1.13).
const PIXELS_PER_CHARACTER = 7;
const PIXELS_OF_PADDING = 5;
export const ROW_HEIGHT = 22;
// A screen pixel is 1/96 inch, a point 1/72 inch (CSS Values and Units 3, 6.2). A file holds no row above 409 points (the host's published limit).
const POINTS_PER_PIXEL = 0.75;
const HIGHEST_POINTS = 409;

export const pixelsOf = (characters: number): number => Math.round(characters * PIXELS_PER_CHARACTER + PIXELS_OF_PADDING);
export const pointsOf = (rowPixels: number): number => Math.min(HIGHEST_POINTS, rowPixels * POINTS_PER_PIXEL);
export const rowPixelsOf = (points: number): number => Math.round(points / POINTS_PER_PIXEL);
export const charactersOf = (pixels: number): number => (pixels - PIXELS_OF_PADDING) / PIXELS_PER_CHARACTER;

/** A planned sheet in the engine's own terms. Entry rules are added when the sheet is open. */
export function worksheetData(plan: SheetPlan, id: string, name: string): Partial<IWorksheetData> {
  const cells: IObjectMatrixPrimitiveType<ICellData> = {};
  for (const planned of plan.cells) {
    const { row, column } = cellArea(planned.cell) ?? { row: 0, column: 0 };
    (cells[row] ??= {})[column] = dataOf(planned);
  }
  const rows = Math.max(...Object.keys(cells).map(Number), 0) + 1;
  return {
    id,
    name,
    rowCount: Math.max(ROWS, rows + ROWS / 2),
    columnCount: Math.max(COLUMNS, plan.columnWidths.length),
    defaultRowHeight: ROW_HEIGHT,
    cellData: cells,
    columnData: Object.fromEntries(plan.columnWidths.map((characters, column) => [column, { w: pixelsOf(characters) }])),
    ...(plan.frozenRows > 0 && { freeze: { xSplit: 0, ySplit: plan.frozenRows, startRow: plan.frozenRows, startColumn: -1 } }),
  };
}

function dataOf({ content, formula, style, format }: PlannedCell): ICellData {
  const held: ICellData = formula === undefined ? cellData(content ?? null) : { f: formula };
  return { ...held, s: gridStyle(style, format) };
}
