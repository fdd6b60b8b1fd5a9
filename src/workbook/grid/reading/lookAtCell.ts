import type { FWorksheet } from "@univerjs/sheets/facade";
import { areaNamed } from "../../areaNamed";
import { isWholeColumns, isWholeRows, wholeLines, type CellArea } from "../../cellArea";
import type { Calculation, CellLook, InputCell } from "../../Workbook";
import type { GridEngine } from "../GridEngine";
import { readCell, spillOver, spillsOver } from "./readCell";
import { usedArea } from "./usedArea";

/** The grid calculates by itself after every change. */
export const calculationOf = (engine: GridEngine): Calculation => ({ state: engine.isCalculating() ? "calculating" : "done", manual: false });

export function lookAtCell(engine: GridEngine, sheet: FWorksheet, cell: string): CellLook {
  const { row, column } = areaNamed(cell);
  const found = {
    address: { sheet: sheet.getSheetName(), cell },
    reading: readCell(engine, sheet, row, column),
    calculation: calculationOf(engine),
  };
  const spill = spillOver(engine, sheet.getSheetId(), row, column);
  if (spill === undefined || (spill.row === row && spill.column === column)) return found;
  return { ...found, anchor: readCell(engine, sheet, spill.row, spill.column) };
}

/** The cells of an input; whole columns and rows end where they are filled. */
export function readInputCells(engine: GridEngine, sheet: FWorksheet, range: string, spill: boolean): InputCell[][] {
  const named = wholeLines(range) ?? areaNamed(range);
  const area = spill ? (spillOver(engine, sheet.getSheetId(), named.row, named.column) ?? named) : named;
  const spillAt = spillsOver(engine, sheet.getSheetId());
  const cells = (wanted: CellArea): InputCell[][] =>
    Array.from({ length: wanted.rows }, (_, row) =>
      Array.from({ length: wanted.columns }, (_column, column) => readCell(engine, sheet, wanted.row + row, wanted.column + column, spillAt)),
    );
  if (!isWholeColumns(area) && !isWholeRows(area)) return cells(area);
  const used = usedArea(engine, sheet, area);
  const rows = isWholeColumns(area) ? (used === undefined ? 1 : used.row + used.rows) : area.rows;
  const columns = isWholeRows(area) ? (used === undefined ? 1 : used.column + used.columns) : area.columns;
  return withoutBlankEnd(cells({ ...area, rows, columns }), isWholeColumns(area), isWholeRows(area));
}

/** Cuts off blank rows or columns behind the last that holds anything; one always stays. */
function withoutBlankEnd(cells: InputCell[][], cutRows: boolean, cutColumns: boolean): InputCell[][] {
  const isFilled = ({ value }: InputCell): boolean => value !== null;
  const rows = cells.reduce((so, line, row) => (line.some(isFilled) ? row + 1 : so), 1);
  const columns = cells.reduce((so, line) => line.reduce((most, cell, column) => (isFilled(cell) ? Math.max(most, column + 1) : most), so), 1);
  return cells.slice(0, cutRows ? rows : undefined).map((line) => line.slice(0, cutColumns ? columns : undefined));
}
