/** Hands out the rows of a sheet from top to bottom and remembers how high each is. */
export class Rows {
  /** Points, row by row from 1. */
  readonly heights: number[] = [];

  /** The next row. @param height points */
  next(height: number): number {
    return this.heights.push(height);
  }

  /** So many rows, as the first and the last of them. */
  run(count: number, height: number): { first: number; last: number } {
    const first = this.heights.length + 1;
    for (let row = 0; row < count; row++) this.next(height);
    return { first, last: this.heights.length };
  }

  /** A row for each name, in their order. */
  each<Name extends string>(names: readonly Name[], height: number): Readonly<Record<Name, number>> {
    // Object.fromEntries forgets which names it was given.
    return Object.fromEntries(names.map((name) => [name, this.next(height)])) as Record<Name, number>;
  }

  get total(): number {
    return this.heights.reduce((sum, height) => sum + height, 0);
  }
}
