import { cellArea, cellAt } from "./cellArea";
import type { CellContent, RangeReading } from "./Workbook";

/** What was typed into a sheet, under the name of each cell: the cell formula or the value. Cells that a spill fills are left out. */
export function typedCells({ rows }: RangeReading): ReadonlyMap<string, Exclude<CellContent, null>> {
  const cells = rows.flat();
  const filled = new Set<string>();
  for (const { spill } of cells) {
    const { row, column, rows: down, columns: across } = cellArea(spill) ?? { row: 0, column: 0, rows: 0, columns: 0 };
    for (let index = 0; index < down * across; index++) filled.add(cellAt(row + Math.floor(index / across), column + (index % across)));
  }
  return new Map(
    cells.flatMap(({ cell, formula, value }): [string, Exclude<CellContent, null>][] => {
      if (formula !== "") return [[cell, formula]];
      return value === null || filled.has(cell) ? [] : [[cell, value]];
    }),
  );
}

/** True where the same things stand on a sheet, typed or as formulas; what formulas come to may differ. */
export const holdsTheSame = (one: RangeReading, other: RangeReading): boolean =>
  JSON.stringify([...typedCells(one)]) === JSON.stringify([...typedCells(other)]);
