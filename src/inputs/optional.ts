import { InputProblem } from "../problems/InputProblem";
import { BLANK, type CellValue } from "./CellValue";
import type { CellInput, ColumnInput } from "./Input";
import { isNothing } from "./number";

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

/**
 * The same input, read as undefined only when the argument is left out. A 0 is refused like any blank where 0 means
 * blank: on desktop hosts that is how a reference to an empty cell arrives, and falling back on a default there would
 * give a wrong answer without a word. Hosts that hand an empty cell over as null cannot be told from a left-out argument.
 */
export const omittable = <T>(input: CellInput<T>): CellInput<T | undefined> => ({
  ...input,
  optional: true,
  read: (value, argument) => (isNothing(value) ? undefined : input.read(value, argument)),
});

/** The same input, but what is wrong with it is handed over as a value. An error that the cell already shows is still passed on. */
export const orProblem = <T>(input: CellInput<T>): CellInput<T | InputProblem> => ({
  ...input,
  read: (value, argument) => {
    try {
      return input.read(value, argument);
    } catch (thrown) {
      if (thrown instanceof InputProblem) return thrown;
      throw thrown;
    }
  },
});
