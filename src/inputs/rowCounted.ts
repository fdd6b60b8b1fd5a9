import type { ColumnInput } from "./Input";

/** A column's values with the number of cells given, blanks at the end included. */
export interface RowCounted<T> {
  readonly values: T;
  readonly rows: number;
}

/** The same column with its number of cells, so that two columns can be held to one size though both end in blanks. */
export const rowCounted = <T>(input: ColumnInput<T>): ColumnInput<RowCounted<T>> => ({
  ...input,
  read: (cells, argument) => ({ values: input.read(cells, argument), rows: cells.length }),
});
