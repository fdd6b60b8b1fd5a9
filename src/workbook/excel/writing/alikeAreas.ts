import { cellArea, type CellArea } from "../../cellArea";
import type { PlannedCell } from "../../SheetPlan";

/**
 * Cells that share a property, as few rectangles: cells below each other are joined, then such columns side by side.
 * @param property what the cells share; cells for which it is undefined are left out
 */
export function alikeAreas<T extends string>(
  cells: readonly PlannedCell[],
  property: (cell: PlannedCell) => T | undefined,
): { value: T; area: CellArea }[] {
  const single = cells.flatMap((planned) => {
    const value = property(planned);
    const area = cellArea(planned.cell);
    return value === undefined || area === undefined ? [] : [{ value, area }];
  });
  const columns = joined(
    single.sort((one, other) => one.area.column - other.area.column || one.area.row - other.area.row),
    (above, below) => above.column === below.column && above.row + above.rows === below.row,
    (above, below) => ({ ...above, rows: above.rows + below.rows }),
  );
  return joined(
    columns.sort((one, other) => one.area.row - other.area.row || one.area.rows - other.area.rows || one.area.column - other.area.column),
    (left, right) => left.row === right.row && left.rows === right.rows && left.column + left.columns === right.column,
    (left, right) => ({ ...left, columns: left.columns + right.columns }),
  );
}

function joined<T>(
  pieces: readonly { value: T; area: CellArea }[],
  touch: (one: CellArea, next: CellArea) => boolean,
  join: (one: CellArea, next: CellArea) => CellArea,
): { value: T; area: CellArea }[] {
  const areas: { value: T; area: CellArea }[] = [];
  for (const piece of pieces) {
    const last = areas.at(-1);
    if (last !== undefined && last.value === piece.value && touch(last.area, piece.area)) last.area = join(last.area, piece.area);
    else areas.push({ ...piece });
  }
  return areas;
}
