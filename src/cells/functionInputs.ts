import type { CellFunction } from "../functions/cellFunction";
import type { CellInput, Input } from "../inputs/Input";

export interface Named<I> {
  readonly name: string;
  readonly input: I;
}

export type NamedCell = Named<CellInput<unknown>>;

interface FunctionInputs {
  /** In the order typed. */
  readonly every: readonly Named<Input<unknown>>[];
  /** The same list where each is a single cell; undefined for a function that takes a column. */
  readonly cells: readonly NamedCell[] | undefined;
}

// Listing the entries of an object costs more than many a computation; a function's inputs never change.
const listed = new WeakMap<CellFunction, FunctionInputs>();

export function inputsOf(definition: CellFunction): FunctionInputs {
  const known = listed.get(definition);
  if (known !== undefined) return known;
  const every = Object.entries(definition.inputs).map(([name, input]) => ({ name, input }));
  const inputs = { every, cells: every.every(isCell) ? every : undefined };
  listed.set(definition, inputs);
  return inputs;
}

const isCell = (named: Named<Input<unknown>>): named is NamedCell => named.input.shape === "cell";
