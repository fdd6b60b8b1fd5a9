import { CellProblem } from "../../src/cells/CellProblem";
import { everyFunction } from "../../src/functions/catalogue";
import { callLiteral } from "./call";

// Examples print a value as a reader would check it; a double holds at least this many figures of it.
const FIGURES = 12;

const rounded = (value: unknown): unknown => (typeof value === "number" ? Number(value.toPrecision(FIGURES)) : value);
const comparable = (answer: unknown): unknown =>
  Array.isArray(answer) ? answer.map((row: unknown) => (Array.isArray(row) ? row.map(rounded) : rounded(row))) : rounded(answer);

test.each(everyFunction.map((definition) => [definition.name, definition] as const))("%s has an example and a source", (_name, definition) => {
  expect(definition.examples.length).toBeGreaterThan(0);
  expect(definition.source.length).toBeGreaterThan(10);
});

test.each(everyFunction.flatMap(({ examples }) => examples.map((example) => [example.cell, example] as const)))(
  "%s shows what its help says",
  (cell, { gives }) => {
    const answer = callLiteral(cell);
    expect(answer).not.toBeInstanceOf(CellProblem);
    // One value in a rectangle of one cell stands for itself.
    const single = Array.isArray(answer) && !Array.isArray(gives) ? answer[0]?.[0] : answer;
    expect(comparable(single)).toEqual(comparable(gives));
  },
);
