import type { CellFunction } from "../functions/cellFunction";
import type { Input } from "../inputs/Input";
import { gridOf, type Grid } from "./Grid";

/** One input of a function together with the argument given for it. */
export interface GivenInput {
  readonly name: string;
  readonly input: Input<unknown>;
  /** Undefined where the argument was left out. */
  readonly grid: Grid | undefined;
}

/** The inputs of a function with its raw arguments; further entries (the host's invocation object) are ignored. */
export const givenInputs = (definition: CellFunction, raw: readonly unknown[]): readonly GivenInput[] =>
  Object.entries(definition.inputs).map(([name, input], index) => ({ name, input, grid: gridOf(raw[index]) }));
