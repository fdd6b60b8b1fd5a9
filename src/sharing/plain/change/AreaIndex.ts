import type { CellArea } from "../../../workbook/cellArea";

/**
 * Which formulas refer to a cell, each told once: a tree of halved rows for each column, in which an area stands at the few nodes that make
 * it up. A lookup passes the nodes above one row and empties them, so that all lookups together take time in proportion to the
 * areas, not to areas times cells.
 */
export class AreaIndex {
  private readonly columns = new Map<number, Map<number, number[]>>();
  private readonly size: number;

  /** @param rows, columns how far down and right any cell stands that will be looked up */
  constructor(
    rows: number,
    private readonly widest: number,
  ) {
    let size = 1;
    while (size < rows) size *= 2;
    this.size = size;
  }

  /** @param formula its number, told when a cell of the area is looked up */
  add({ row, column, rows, columns }: CellArea, formula: number): void {
    const last = Math.min(column + columns, this.widest);
    for (let one = column; one < last; one++) this.addRows(one, row, Math.min(row + rows, this.size), formula);
  }

  private addRows(column: number, first: number, end: number, formula: number): void {
    const nodes = this.columns.get(column) ?? new Map<number, number[]>();
    this.columns.set(column, nodes);
    for (let [low, high] = [first + this.size, end + this.size]; low < high; low >>= 1, high >>= 1) {
      if (low & 1) put(nodes, low++, formula);
      if (high & 1) put(nodes, --high, formula);
    }
  }

  /** The formulas that refer to a cell and have not been told before. */
  take(row: number, column: number): readonly number[] {
    const nodes = this.columns.get(column);
    if (nodes === undefined || row >= this.size) return [];
    const found: number[] = [];
    for (let node = row + this.size; node >= 1; node >>= 1) {
      const here = nodes.get(node);
      if (here === undefined) continue;
      found.push(...here);
      nodes.delete(node);
    }
    return found;
  }
}

function put(nodes: Map<number, number[]>, node: number, formula: number): void {
  const here = nodes.get(node);
  if (here === undefined) nodes.set(node, [formula]);
  else here.push(formula);
}
