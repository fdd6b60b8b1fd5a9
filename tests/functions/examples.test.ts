import { CellProblem } from "../../src/cells/CellProblem";
import { everyFunction } from "../../src/functions/catalogue";
import { leavesArgumentOut } from "../leavesArgumentOut";
import { answerOf, callLiteral, literalArguments } from "./call";

// Examples print a value as a reader would check it; a double holds at least this many figures of it.
const FIGURES = 12;

/** Agrees in twelve figures and in twelve decimals: large numbers are not let off the last, small ones not the first. */
function expectSame(answer: unknown, given: unknown): void {
  if (typeof given === "number" && typeof answer === "number") {
    expect(Number(answer.toPrecision(FIGURES))).toBe(Number(given.toPrecision(FIGURES)));
    expect(answer).toBeCloseTo(given, FIGURES);
  } else if (Array.isArray(given) && Array.isArray(answer)) {
    expect(answer).toHaveLength(given.length);
    given.forEach((one, index) => expectSame(answer[index], one));
  } else expect(answer).toBe(given);
}

test.each(everyFunction.map((definition) => [definition.name, definition] as const))("%s has an example and a source", (name, definition) => {
  expect(definition.examples.length).toBeGreaterThan(0);
  expect(definition.source.length).toBeGreaterThan(10);
  for (const { cell } of definition.examples) expect(cell.startsWith(`=RETORT.${name}(`)).toBe(true);
});

test.each(everyFunction.flatMap((definition) => definition.examples.map(({ cell }) => [cell, definition] as const)))(
  "%s answers the same with empty text for each input that it leaves out",
  (cell, { name, inputs }) => {
    const given = literalArguments(cell);
    const filled = Object.keys(inputs).map((_, index) => given[index] ?? "");
    expect(answerOf(name, ...filled)).toEqual(answerOf(name, ...given));
  },
);

test("no example leaves an argument out between commas", () => {
  const cells = everyFunction.flatMap(({ examples }) => examples.map(({ cell }) => cell));
  expect(cells.filter(leavesArgumentOut)).toEqual([]);
});

test.each(everyFunction.flatMap(({ examples }) => examples.map((example) => [example.cell, example] as const)))(
  "%s shows what its help says",
  (cell, { gives }) => {
    const answer = callLiteral(cell);
    expect(answer).not.toBeInstanceOf(CellProblem);
    expectSame(answer, gives);
  },
);
