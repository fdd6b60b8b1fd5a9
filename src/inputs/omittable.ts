import type { CellInput } from "./Input";
import { isNothing } from "./scalar";

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
