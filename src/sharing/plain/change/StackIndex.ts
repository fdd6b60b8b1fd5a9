import type { CellArea } from "../../../workbook/cellArea";

/** Numbers in cells of one sheet, and the least of those within an area: a tree of halved rows for each column. */
export class StackIndex {
  private readonly columns = new Map<number, Int32Array>();
  private readonly size: number;

  /** @param rows how far down any cell stands */
  constructor(rows: number) {
    let size = 1;
    while (size < rows) size *= 2;
    this.size = size;
  }

  put(row: number, column: number, number: number): void {
    const tree = this.columns.get(column) ?? new Int32Array(2 * this.size).fill(NONE);
    this.columns.set(column, tree);
    let node = row + this.size;
    tree[node] = number;
    while (node > 1) {
      node >>= 1;
      tree[node] = Math.min(tree[2 * node] as number, tree[2 * node + 1] as number);
    }
  }

  take(row: number, column: number): void {
    this.put(row, column, NONE);
  }

  /** Infinity where there is none. */
  least({ row, column, rows, columns }: CellArea): number {
    let least = NONE;
    for (const [one, tree] of this.columns) {
      if (one < column || one >= column + columns) continue;
      let [low, high] = [Math.min(row, this.size) + this.size, Math.min(row + rows, this.size) + this.size];
      for (; low < high; low >>= 1, high >>= 1) {
        if (low & 1) least = Math.min(least, tree[low++] as number);
        if (high & 1) least = Math.min(least, tree[--high] as number);
      }
    }
    return least === NONE ? Infinity : least;
  }
}

const NONE = 0x7fffffff;
