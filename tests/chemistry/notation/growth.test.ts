import { parseFormula } from "../../../src/chemistry/parseFormula";
import { InputProblem } from "../../../src/problems/InputProblem";

// Pieces that make one of the reader's rules look back or ahead, repeated to the longest text it takes.
const PIECES =
  "CC2.5|C2.5|NO2.2Na|Fe2O3.4SiO2|H2O.|H2O.5|·5H2O|SO4.5|ClO4.|(CC)2.5Na|(NH4)2.|2.5)|.1|C.1|1.|2.|C1,5|H20|C20|(I)|(V)|2(V)|(|((C)|[13C]|^13C|²|^1|1 |1. |  |C |½|1/2|x|" +
  "NaCl x 2|5x5|_2|H_2|↑|Na+|+|-|15N|K15N|H218O|Co3|Co|CO|COSO4|TOTO|T|Ca2+|42-| ·| . |1e5|9|e1|a|aa|Xx|T O|CO s|NaN|\u200b|é|😀|O|HCoO";
const BEFORE = ["", "C", "CuSO4.5", "Na", "x"];
const AFTER = ["", "Q", "H2O", "?", "↑", "."];
const LONGEST_READ = 1000;
const CELL = 32_767;

const texts = (length: number): readonly string[] =>
  PIECES.split("|").flatMap((piece) =>
    BEFORE.flatMap((before) =>
      AFTER.map((after) => (before + piece.repeat(Math.ceil(length / piece.length))).slice(0, length - after.length) + after),
    ),
  );

function milliseconds(text: string): number {
  const start = performance.now();
  try {
    parseFormula(text);
  } catch (problem) {
    if (!(problem instanceof InputProblem)) throw problem;
  }
  return performance.now() - start;
}

// The smallest of a few, so that a busy machine is not taken for a slow reader.
const quickest = (text: string): number => Math.min(...[1, 2, 3].map(() => milliseconds(text)));

const LIMIT = 100;
const MOST_GROWTH = 24;

test("no text of up to a cell's 32,767 characters takes longer than a tenth of a second", () => {
  const slow = [...texts(LONGEST_READ), ...texts(CELL)].filter((text) => quickest(text) > LIMIT);
  expect(slow.map((text) => text.slice(0, 30))).toEqual([]);
});

// Eight times the text takes eight times the time in a linear reader, 64 times in a quadratic one. The sum over all shapes evens out the clock.
test("the time grows with the length of the text, not with its square", () => {
  const sizes = [125, 1000];
  for (const size of sizes) texts(size).forEach(quickest);
  const [short = NaN, long = NaN] = sizes.map((size) => texts(size).reduce((sum, text) => sum + quickest(text), 0));
  expect(long / short).toBeLessThan(MOST_GROWTH);
});
