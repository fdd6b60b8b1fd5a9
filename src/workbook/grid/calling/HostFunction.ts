/** An error in place of a value: the code the cell shows and, where a function of ours raised it, the sentence behind it. */
export class GridError {
  constructor(
    readonly code: string,
    readonly message = "",
  ) {}
}

/** What one cell of the grid holds; null is a blank cell. */
export type GridValue = number | string | boolean | null | GridError;

export interface HostParameter {
  readonly name: string;
  readonly about: string;
  readonly optional: boolean;
}

/** One custom function as the grid's engine calls it. */
export interface HostFunction {
  /** As typed in a cell: "RETORT.MOISTURE.WET". */
  readonly fullName: string;
  readonly about: string;
  readonly parameters: readonly HostParameter[];
  /**
   * Never throws.
   * @param given one rectangle of cells for each argument typed, row by row; undefined where an argument was left empty
   * @param address the calling cell with its sheet: "Sheet1!B7"
   * @returns a rectangle of cells
   */
  call(given: readonly (readonly (readonly GridValue[])[] | undefined)[], address: string): GridValue[][];
}
