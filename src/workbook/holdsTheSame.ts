import { cellArea, covers } from "./cellArea";
import type { CellContent, RangeReading } from "./Workbook";

/** What was typed into a sheet, under the name of each cell: the cell formula or the value. Cells that a spill fills are left out. */
export function typedCells({ rows }: RangeReading): ReadonlyMap<string, Exclude<CellContent, null>> {
  const cells = rows.flat();
  const spills = cells.flatMap(({ spill }) => cellArea(spill) ?? []);
  const isFilled = (cell: string): boolean => {
    const at = cellArea(cell);
    return at !== undefined && spills.some((area) => covers(area, at.row, at.column));
  };
  return new Map(
    cells.flatMap(({ cell, formula, value }): [string, Exclude<CellContent, null>][] => {
      if (formula !== "") return [[cell, formula]];
      return value === null || isFilled(cell) ? [] : [[cell, value]];
    }),
  );
}

/** True where the same things stand on a sheet, typed or as formulas; what formulas come to may differ. */
export const holdsTheSame = (one: RangeReading, other: RangeReading): boolean =>
  JSON.stringify([...typedCells(one)]) === JSON.stringify([...typedCells(other)]);
