import type { FWorksheet } from "@univerjs/sheets/facade";
import { covers, type CellArea } from "../../cellArea";
import type { GridEngine } from "../GridEngine";
import { isEmpty } from "./readCell";

/** Every cell that holds anything, spilled cells included, in no order. Two cells at the corners of a sheet are two, not all between them. */
export function usedCells(engine: GridEngine, sheet: FWorksheet): { row: number; column: number }[] {
  const held: { row: number; column: number }[] = [];
  sheet
    .getSheet()
    .getCellMatrix()
    .forValue((row, column, cell) => {
      if (!isEmpty(cell)) held.push({ row, column });
    });
  const spilled = engine.spills.getArrayFormulaCellData()[engine.book.getId()]?.[sheet.getSheetId()] ?? {};
  for (const [row, cells] of Object.entries(spilled))
    for (const column of Object.keys(cells ?? {})) held.push({ row: Number(row), column: Number(column) });
  return held;
}

/**
 * The smallest rectangle around every cell that holds anything; undefined where none does.
 * @param within looks at these cells alone
 */
export function usedArea(engine: GridEngine, sheet: FWorksheet, within?: CellArea): CellArea | undefined {
  const held = usedCells(engine, sheet).filter(({ row, column }) => within === undefined || covers(within, row, column));
  if (held.length === 0) return undefined;
  const rows = held.map(({ row }) => row);
  const columns = held.map(({ column }) => column);
  const first = { row: least(rows), column: least(columns) };
  return { ...first, rows: -least(rows.map((row) => -row)) - first.row + 1, columns: -least(columns.map((column) => -column)) - first.column + 1 };
}

/** A spread argument list has a length limit; this has none. */
const least = (values: readonly number[]): number => values.reduce((so, value) => Math.min(so, value), Infinity);
