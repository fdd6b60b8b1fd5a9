import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem, problemOf, type Answer } from "../../src/cells/CellProblem";
import { inputsOf } from "../../src/cells/functionInputs";
import { givenInputs } from "../../src/cells/GivenInput";
import { onlyRow } from "../../src/cells/oneRow";
import { readInputs, readRow } from "../../src/cells/readInputs";
import { everyFunction } from "../../src/functions/catalogue";
import { takesRanges, type CellFunction } from "../../src/functions/cellFunction";
import { literalArguments, nameIn } from "../functions/call";
import { hostileArguments } from "../functions/hostileCalls";
import { everyRefusal } from "../functions/refusals/everyRefusal";
import { everyPublished } from "../published/everyPublished";

// A call of single cells is answered without ranges. It must say what a range of one cell says, what the same cells say as a row of a longer
// range, and what reading by ranges makes of them: over every example, published row and refusal, and every hostile value in every input.

const typed = new Set([
  ...everyFunction.flatMap(({ examples }) => examples.map(({ cell }) => cell)),
  ...everyPublished.map(({ cell }) => cell),
  ...everyRefusal.map(([cell]) => cell),
]);

/** The arguments of every call with single cells alone; a refused one may have a range, or more arguments than inputs. */
const callsOf = (definition: CellFunction): unknown[][] =>
  [
    ...[...typed].filter((cell) => nameIn(cell) === definition.name).map(literalArguments),
    ...Object.keys(definition.inputs).flatMap((_, index) => hostileArguments(definition, index)),
  ].filter((raw) => !raw.some(Array.isArray) && raw.length <= Object.keys(definition.inputs).length);

const ofSingleCells = everyFunction.filter((definition) => inputsOf(definition).cells !== undefined);
const named = (functions: readonly CellFunction[]): [name: string, definition: CellFunction][] => functions.map((one) => [one.name, one]);

/** What reading gives, or the problem that it ends in. */
function outcome(read: () => Record<string, unknown>): Record<string, unknown> | CellProblem {
  try {
    return read();
  } catch (thrown) {
    return problemOf(thrown);
  }
}

test("every function that takes single cells alone is looked at, with good calls and refused ones", () => {
  expect(ofSingleCells.length).toBeGreaterThan(25);
  for (const definition of ofSingleCells) {
    const answers = callsOf(definition).map((raw) => [callCellFunction(definition, raw)].flat(2)[0]);
    expect(answers.filter((answer) => answer instanceof CellProblem).length).toBeGreaterThan(0);
    expect(answers.filter((answer) => !(answer instanceof CellProblem)).length).toBeGreaterThan(0);
  }
});

test.each(named(ofSingleCells))("%s reads single cells as ranges of one cell are read", (_name, definition) => {
  const inputs = inputsOf(definition).cells ?? [];
  for (const raw of callsOf(definition)) {
    const rectangles = raw.map((value) => [[value]]);
    const cells = onlyRow(raw, inputs.length);
    expect(onlyRow(rectangles, inputs.length)).toEqual(cells);
    const byRow = outcome(() => readRow(inputs, cells ?? []));
    for (const given of [raw, rectangles]) {
      expect(outcome(() => readInputs(givenInputs(definition, given)))).toEqual(byRow);
      expect(outcome(() => readInputs(givenInputs(definition, given), 0, 0))).toEqual(byRow);
    }
  }
});

test.each(named(ofSingleCells))("%s answers single cells as it answers ranges of one cell, as rectangles and as lists", (_name, definition) => {
  for (const raw of callsOf(definition)) {
    const answer = callCellFunction(definition, raw);
    expect(callCellFunction(definition, raw.map((value) => [[value]]))).toEqual(answer); // prettier-ignore
    expect(callCellFunction(definition, raw.map((value) => [value]))).toEqual(answer); // prettier-ignore
  }
});

test.each(named(ofSingleCells.filter(takesRanges)))("%s answers single cells as it answers a row of a longer range", (_name, definition) => {
  for (const raw of callsOf(definition)) {
    const [[alone]] = callCellFunction(definition, raw) as [[Answer]];
    const inRange = callCellFunction(definition, raw.map((value) => [[value], [value]])); // prettier-ignore
    // A row that nobody has filled in stays empty, where a call on it alone says what is missing.
    const wanted = isUnfilled(definition, raw) ? "" : alone;
    expect(inRange).toEqual([[wanted], [wanted]]);
  }
});

/** True where each required cell holds nothing or a 0, and one of them at least nothing, or a 0 that cannot be meant. */
function isUnfilled(definition: CellFunction, raw: readonly unknown[]): boolean {
  const required = Object.values(definition.inputs).flatMap(({ optional, zero }, index) => (optional ? [] : [{ value: raw[index] ?? "", zero }]));
  const isNothing = (value: unknown): boolean => typeof value === "string" && value.trim() === "";
  return required.every(({ value }) => isNothing(value) || value === 0) && required.some(({ value, zero }) => isNothing(value) || zero !== "value");
}
