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

type NamedInput = Pick<GivenInput, "name" | "input">;

// Listing the entries of an object costs more than many a computation; a function's inputs never change.
const listed = new WeakMap<CellFunction, readonly NamedInput[]>();

function inputsOf(definition: CellFunction): readonly NamedInput[] {
  const known = listed.get(definition);
  if (known !== undefined) return known;
  const inputs = Object.entries(definition.inputs).map(([name, input]) => ({ name, input }));
  listed.set(definition, inputs);
  return inputs;
}

/**
 * The inputs of a function with its raw arguments. What comes after them must be nothing, or the host's invocation object.
 * @throws InputProblem for an argument beyond the inputs: a client may know newer metadata than this code, and leaving out what
 *   somebody gave would answer another question than theirs
 */
export function givenInputs(definition: CellFunction, raw: readonly unknown[]): readonly GivenInput[] {
  const inputs = inputsOf(definition);
  for (let beyond = inputs.length; beyond < raw.length; beyond++) {
    if (gridOf(raw[beyond]) !== undefined) throw argumentNotKnown(`${NAMESPACE}.${definition.name}`, beyond + 1);
  }
  return inputs.map(({ name, input }, index) => ({ name, input, grid: gridOf(raw[index]) }));
}
