import { InputProblem } from "../problems/InputProblem";
import type { CellValue } from "./CellValue";
import type { CellInput, ColumnInput } from "./Input";
import { isNothing } from "./number";

/**
 * The same input, read as undefined where nothing is given: left out, blank, spaces, or a 0 where 0 cannot be meant or says that
 * there is none.
 * @param leftOut what happens then, as it follows "Left out: ", without a full stop
 */
export function optional<T>(input: CellInput<T>, leftOut?: string): CellInput<T | undefined>;
export function optional<T>(input: ColumnInput<T>, leftOut?: string): ColumnInput<T | undefined>;
export function optional<T>(input: CellInput<T> | ColumnInput<T>, leftOut?: string): CellInput<T | undefined> | ColumnInput<T | undefined> {
  const described = { optional: true, ...(leftOut === undefined ? {} : { leftOut }) };
  const isNone = (value: CellValue): boolean => value === 0 && input.zero === "none";
  if (input.shape === "cell") {
    return {
      ...input,
      ...described,
      read: (value: CellValue, argument: string) => (isNone(value) || input.isBlank(value) ? undefined : input.read(value, argument)),
    };
  }
  return {
    ...input,
    ...described,
    read: (cells: readonly CellValue[], argument: string) => (cells.every(isNothing) ? undefined : input.read(cells, argument)),
  };
}

/**
 * The same input, read as undefined only when the argument is left out: for an empty vessel, whose weighing changes what every other
 * weighing means. A 0, as which most hosts hand a blank cell over, is refused with the input's own advice. Hosts that hand a blank
 * cell over as null cannot be told from a left-out argument.
 * @param leftOut what happens then, as it follows "Left out: ", without a full stop
 */
export const omittable = <T>(input: CellInput<T>, leftOut?: string): CellInput<T | undefined> => ({
  ...input,
  optional: true,
  zero: "refused",
  ...(leftOut === undefined ? {} : { leftOut }),
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
