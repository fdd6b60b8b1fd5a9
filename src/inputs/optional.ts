import { BLANK, type CellValue } from "./CellValue";
import type { CellInput, ColumnInput } from "./Input";

/** The same input, read as undefined when it is left out or its cells are all blank. */
export function optional<T>(input: CellInput<T>): CellInput<T | undefined>;
export function optional<T>(input: ColumnInput<T>): ColumnInput<T | undefined>;
export function optional<T>(input: CellInput<T> | ColumnInput<T>): CellInput<T | undefined> | ColumnInput<T | undefined> {
  if (input.shape === "cell") {
    return {
      ...input,
      optional: true,
      read: (value: CellValue, argument: string) => (input.isBlank(value) ? undefined : input.read(value, argument)),
    };
  }
  const absent = (cells: readonly unknown[]): boolean => cells.every((cell) => cell === BLANK || cell === "");
  return {
    ...input,
    optional: true,
    read: (cells: readonly CellValue[], argument: string) => (absent(cells) ? undefined : input.read(cells, argument)),
  };
}
