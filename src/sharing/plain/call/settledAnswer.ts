import type { CellFunction } from "../../../functions/cellFunction";
import { problemInCells } from "../../../functions/inCells/problemInCells";
import { textInCells } from "../../../functions/inCells/sentenceInCells";
import { BLANK, CellError, type CellValue } from "../../../inputs/CellValue";
import { ArgumentProblem } from "../../../problems/ArgumentProblem";
import type { Argument, NamedInput } from "./Argument";

/** What the call gives whatever the cells hold; undefined where they decide. */
export const settledAnswer = (definition: CellFunction, inputs: readonly NamedInput[], given: readonly Argument[]): string | undefined =>
  settledProblem(definition, inputs, given) ?? settledWords(definition, inputs, given);

/** The error that the call gives whatever the cells hold, because of what is typed into it or left out; errors before all else. */
function settledProblem(definition: CellFunction, inputs: readonly NamedInput[], given: readonly Argument[]): string | undefined {
  const error = given.find((one) => one.kind === "settled" && one.value instanceof CellError);
  if (error?.kind === "settled" && error.value instanceof CellError) return error.value.code;
  try {
    const read: Record<string, unknown> = {};
    for (const [index, [name, input]] of inputs.entries()) {
      const one = given[index];
      if (one?.kind === "settled") read[name] = input.shape === "cell" ? input.read(one.value, name) : input.read(columnOf(one.value), name);
    }
    if (given.every(({ kind }) => kind === "settled")) void (definition.gives === "table" ? definition.computeTable(read) : definition.compute(read));
  } catch (thrown) {
    if (thrown instanceof ArgumentProblem) return problemInCells(thrown);
    throw thrown;
  }
  return undefined;
}

/** What a function says in words about nothing but what is typed into the call. */
function settledWords(definition: CellFunction, inputs: readonly NamedInput[], given: readonly Argument[]): string | undefined {
  if (definition.gives !== "value" || !given.every(({ kind }) => kind === "settled")) return undefined;
  const read = inputs.map(([name, input], index) => {
    const { value } = given[index] as Extract<Argument, { kind: "settled" }>;
    return [name, input.shape === "cell" ? input.read(value, name) : input.read(columnOf(value), name)] as const;
  });
  const answer = definition.compute(Object.fromEntries(read));
  return typeof answer === "string" ? textInCells(answer) : undefined;
}

const columnOf = (value: CellValue): readonly CellValue[] => (value === BLANK ? [] : [value]);
