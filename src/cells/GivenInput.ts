import { NAMESPACE } from "../functions/catalogue";
import type { CellFunction } from "../functions/cellFunction";
import type { Input } from "../inputs/Input";
import { argumentNotKnown } from "../problems/inputProblems";
import { inputsOf, type Named } from "./functionInputs";
import { gridOf, isLeftOut, type Grid } from "./Grid";

/** One input of a function together with the argument given for it. */
export interface Given<I> extends Named<I> {
  /** Undefined where the argument was left out. */
  readonly grid: Grid | undefined;
}

export type GivenInput = Given<Input<unknown>>;

/** Each input with its raw argument as a grid. */
export const withGrids = <I>(inputs: readonly Named<I>[], raw: readonly unknown[]): readonly Given<I>[] =>
  inputs.map(({ name, input }, index) => ({ name, input, grid: gridOf(raw[index]) }));

/** The inputs of a function with its raw arguments. */
export const givenInputs = (definition: CellFunction, raw: readonly unknown[]): readonly GivenInput[] => withGrids(inputsOf(definition).every, raw);

/**
 * What comes after a function's inputs must be nothing, or the host's invocation object.
 * @throws InputProblem for an argument beyond the inputs: a client may know newer metadata than this code, and leaving out what
 *   somebody gave would answer another question than theirs
 */
export function refuseUnknown(name: string, raw: readonly unknown[], inputs: number): void {
  for (let beyond = inputs; beyond < raw.length; beyond++) {
    if (!isLeftOut(raw[beyond])) throw argumentNotKnown(`${NAMESPACE}.${name}`, beyond + 1);
  }
}
