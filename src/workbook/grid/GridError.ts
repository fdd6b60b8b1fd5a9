/** An error in place of a value: the code the cell shows and, where a function of ours raised it, the sentence behind it. */
export class GridError {
  constructor(
    readonly code: string,
    readonly message = "",
  ) {}
}

/** What one cell of the grid holds; null is a blank cell. */
export type GridValue = number | string | boolean | null | GridError;
