import type { FWorksheet } from "@univerjs/sheets/facade";
import type { CellArea } from "../cellArea";
import type { GridEngine } from "./GridEngine";
import { isEmpty } from "./readCell";

/** The smallest rectangle around every cell that holds anything, spilled cells included; undefined on an empty sheet. */
export function usedArea(engine: GridEngine, sheet: FWorksheet): CellArea | undefined {
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
  if (held.length === 0) return undefined;
  const rows = held.map(({ row }) => row);
  const columns = held.map(({ column }) => column);
  const first = { row: least(rows), column: least(columns) };
  return { ...first, rows: -least(rows.map((row) => -row)) - first.row + 1, columns: -least(columns.map((column) => -column)) - first.column + 1 };
}

/** A spread argument list has a length limit; this has none. */
const least = (values: readonly number[]): number => values.reduce((so, value) => Math.min(so, value), Infinity);
