import { NAMESPACE } from "../functions/catalogue";
import type { CellFunction } from "../functions/cellFunction";
import type { Input } from "../inputs/Input";
import { argumentNotKnown } from "../problems/inputProblems";
import { inputsOf, type Named } from "./functionInputs";
import { gridOf, isLeftOut, type Grid } from "./Grid";

/** One input of a function together with the argument given for it. */
export interface GivenInput extends Named<Input<unknown>> {
  /** Undefined where the argument was left out. */
  readonly grid: Grid | undefined;
}

/** The inputs of a function with its raw arguments. */
export const givenInputs = (definition: CellFunction, raw: readonly unknown[]): readonly GivenInput[] =>
  inputsOf(definition).every.map(({ name, input }, index) => ({ name, input, grid: gridOf(raw[index]) }));

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
