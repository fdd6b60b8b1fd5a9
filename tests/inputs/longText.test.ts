import { callCellFunction } from "../../src/cells/callCellFunction";
import { everyFunction } from "../../src/functions/catalogue";
import { literalArguments } from "../functions/call";

// The longest text of a cell (Excel specifications and limits).
const LONGEST = 32_767;
const fill = (start: string, middle: string, end: string): string =>
  `${start}${middle.repeat(Math.floor((LONGEST - start.length - end.length) / middle.length))}${end}`;

/** Texts that make a backtracking pattern try every way of sharing them out. */
const HOSTILE: readonly string[] = [
  fill("1", " ", "x"),
  fill("", " ", "x"),
  fill("", "\t", "1"),
  fill("", "1", "x"),
  fill("1", ",1", "x"),
  fill("1", ".", "x"),
  fill("-", "1.", "%%"),
  fill("", "tared ", ""),
  fill('"', "'", "!"),
  fill("", "\u00a0", "%"),
];

// A formula's text is at most a thousand characters long, and its reader is tested in tests/chemistry.
const inputs = everyFunction.flatMap((definition) =>
  Object.entries(definition.inputs).flatMap(([input, { called, shape }], index) =>
    called === "a chemical formula" ? [] : [{ title: `${definition.name}(${input})`, definition, index, shape }],
  ),
);

// Ten texts are refused in a few milliseconds; where time grew with the square of the length, each took two seconds.
const MILLISECONDS = 1000;

test.each(inputs.map((one) => [one.title, one] as const))("%s refuses the longest text of a cell at once", (_title, { definition, index, shape }) => {
  const example = literalArguments(definition.examples[0]?.cell as string);
  const start = performance.now();
  for (const text of HOSTILE) {
    const given = shape === "column" ? [[text], [text]] : text;
    const raw = Object.keys(definition.inputs).map((_, place) => (place === index ? given : (example[place] ?? null)));
    expect(JSON.stringify(callCellFunction(definition, raw)).length).toBeLessThan(600);
  }
  expect(performance.now() - start).toBeLessThan(MILLISECONDS);
});
