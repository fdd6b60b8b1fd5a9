import type { CellArea } from "../../../workbook/cellArea";

/** Cells of one sheet by column, for areas looked at again and again: how many there are in one, and each of them once. */
export class FilledCells {
  private readonly next = new Map<number, Int32Array>();

  /** @param rows rising, by column */
  constructor(private readonly rows: ReadonlyMap<number, readonly number[]>) {}

  count(area: CellArea): number {
    let found = 0;
    this.columnsOf(area, (rows) => (found += firstFrom(rows, area.row + area.rows) - firstFrom(rows, area.row)));
    return found;
  }

  /** Each cell of an area that has not been visited before. */
  visit(area: CellArea, visitor: (row: number, column: number) => void): void {
    this.columnsOf(area, (rows, column) => {
      const next = this.nextIn(column, rows.length);
      const end = firstFrom(rows, area.row + area.rows);
      for (let index = unvisited(next, firstFrom(rows, area.row)); index < end; index = unvisited(next, index)) {
        next[index] = index + 1;
        visitor(rows[index] as number, column);
      }
    });
  }

  /** The first cell of an area that has not been visited before, which now has. */
  takeOne(area: CellArea): { readonly row: number; readonly column: number } | undefined {
    let found: { row: number; column: number } | undefined;
    this.columnsOf(area, (rows, column) => {
      if (found !== undefined) return;
      const next = this.nextIn(column, rows.length);
      const index = unvisited(next, firstFrom(rows, area.row));
      const row = rows[index];
      if (row === undefined || row >= area.row + area.rows) return;
      next[index] = index + 1;
      found = { row, column };
    });
    return found;
  }

  private columnsOf({ column, columns }: CellArea, each: (rows: readonly number[], column: number) => void): void {
    if (columns > this.rows.size) {
      for (const [one, rows] of this.rows) if (one >= column && one < column + columns) each(rows, one);
      return;
    }
    for (let one = column; one < column + columns; one++) {
      const rows = this.rows.get(one);
      if (rows !== undefined) each(rows, one);
    }
  }

  private nextIn(column: number, length: number): Int32Array {
    const known = this.next.get(column);
    if (known !== undefined) return known;
    const next = Int32Array.from({ length: length + 1 }, (_, index) => index);
    this.next.set(column, next);
    return next;
  }
}

/** The first from an index that has not been visited; the way there is made shorter for the next time. */
function unvisited(next: Int32Array, from: number): number {
  let root = from;
  while (next[root] !== root) root = next[root] as number;
  for (let index = from; next[index] !== root && index !== root;) {
    const after = next[index] as number;
    next[index] = root;
    index = after;
  }
  return root;
}

/** The index of the first row from here on. */
function firstFrom(rows: readonly number[], row: number): number {
  let [low, high] = [0, rows.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rows[middle] as number) < row) low = middle + 1;
    else high = middle;
  }
  return low;
}
