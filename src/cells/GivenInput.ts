import { NAMESPACE } from "../functions/catalogue";
import type { CellFunction } from "../functions/cellFunction";
import type { Input } from "../inputs/Input";
import { argumentNotKnown } from "../problems/inputProblems";
import { gridOf, type Grid } from "./Grid";

/** One input of a function together with the argument given for it. */
export interface GivenInput {
  readonly name: string;
  readonly input: Input<unknown>;
  /** Undefined where the argument was left out. */
  readonly grid: Grid | undefined;
}

/**
 * The inputs of a function with its raw arguments. What comes after them must be nothing, or the host's invocation object.
 * @throws InputProblem for an argument beyond the inputs: a client may know newer metadata than this code, and leaving out what
 *   somebody gave would answer another question than theirs
 */
export function givenInputs(definition: CellFunction, raw: readonly unknown[]): readonly GivenInput[] {
  const inputs = Object.entries(definition.inputs);
  const beyond = raw.slice(inputs.length).findIndex((argument) => gridOf(argument) !== undefined);
  if (beyond >= 0) throw argumentNotKnown(`${NAMESPACE}.${definition.name}`, inputs.length + beyond + 1);
  return inputs.map(([name, input], index) => ({ name, input, grid: gridOf(raw[index]) }));
}
