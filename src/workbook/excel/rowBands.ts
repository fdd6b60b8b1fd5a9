import type { CellArea } from "../cellArea";

/** The area cut into bands of whole rows of at most so many cells, top to bottom; a single row is never cut. */
export function rowBands(area: CellArea, mostCells: number): CellArea[] {
  const height = Math.max(1, Math.floor(mostCells / area.columns));
  return Array.from({ length: Math.ceil(area.rows / height) }, (_, index) => ({
    ...area,
    row: area.row + index * height,
    rows: Math.min(height, area.rows - index * height),
  }));
}
