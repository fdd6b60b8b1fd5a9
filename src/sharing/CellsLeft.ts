import type { CellArea } from "../workbook/cellArea";

/** A cell that is left, and the number it was put under. */
export interface CellLeft {
  readonly row: number;
  readonly column: number;
  readonly node: number;
}

interface Column {
  /** Rising. */
  rows: number[];
  nodes: number[];
  /** For each place the next one that may be left; one more than there are cells. */
  next: Int32Array | undefined;
}

/** Cells of one sheet that are taken away one by one, looked at by area again and again. Cells are added before the first look. */
export class CellsLeft {
  private readonly columns = new Map<number, Column>();
  private order: number[] | undefined;

  /** @param node under which every cell of the area is told */
  add({ row, column, rows, columns }: CellArea, node: number): void {
    for (let across = column; across < column + columns; across++) {
      const here = this.columns.get(across) ?? { rows: [], nodes: [], next: undefined };
      this.columns.set(across, here);
      for (let down = row; down < row + rows; down++) {
        here.rows.push(down);
        here.nodes.push(node);
      }
    }
  }

  has(row: number, column: number): boolean {
    return this.firstIn({ row, column, rows: 1, columns: 1 }, { column, row }) !== undefined;
  }

  /** The first cell of an area, column by column, from a place on. */
  firstIn({ row, column, rows, columns }: CellArea, from: Pick<CellLeft, "row" | "column">): CellLeft | undefined {
    this.order ??= [...this.columns.keys()].sort((one, other) => one - other);
    const start = Math.max(column, from.column);
    for (let index = atLeast(this.order, start); index < this.order.length; index++) {
      const across = this.order[index] as number;
      if (across >= column + columns) return undefined;
      const here = sorted(this.columns.get(across) as Column);
      const place = left(here.next, atLeast(here.rows, across === from.column ? Math.max(row, from.row) : row));
      const found = here.rows[place];
      if (found !== undefined && found < row + rows) return { row: found, column: across, node: here.nodes[place] as number };
    }
    return undefined;
  }

  remove({ row, column, rows, columns }: CellArea): void {
    for (let across = column; across < column + columns; across++) {
      const here = this.columns.get(across);
      if (here === undefined) continue;
      const { next } = sorted(here);
      for (let place = atLeast(here.rows, row); (here.rows[place] ?? Infinity) < row + rows; place++) next[place] = place + 1;
    }
  }
}

function sorted(column: Column): Column & { readonly next: Int32Array } {
  if (column.next === undefined) {
    const order = [...column.rows.keys()].sort((one, other) => (column.rows[one] as number) - (column.rows[other] as number));
    column.nodes = order.map((place) => column.nodes[place] as number);
    column.rows = order.map((place) => column.rows[place] as number);
    column.next = Int32Array.from({ length: order.length + 1 }, (_, place) => place);
  }
  return column as Column & { readonly next: Int32Array };
}

/** The first from a place that is left; the way there is made shorter for the next time. */
function left(next: Int32Array, from: number): number {
  let root = from;
  while (next[root] !== root) root = next[root] as number;
  for (let place = from; next[place] !== root && place !== root;) {
    const after = next[place] as number;
    next[place] = root;
    place = after;
  }
  return root;
}

/** The place of the first number that is not below another. */
function atLeast(rising: readonly number[], least: number): number {
  let [low, high] = [0, rising.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rising[middle] as number) < least) low = middle + 1;
    else high = middle;
  }
  return low;
}
