import { CellProblem } from "../../../src/cells/CellProblem";
import { callLiteral, nameIn } from "../call";
import { everyRefusal } from "./everyRefusal";

/** All that the cell says: the code and message of its problem, or its words where the function answers in words. */
function says(cell: string): unknown {
  const answer = callLiteral(cell);
  return answer instanceof CellProblem ? `${answer.code} ${answer.message}` : answer;
}

const pinned = everyRefusal.map(([cell, sentence]) => [cell, sentence] as const);

test.each(pinned)("%s says: %s", (cell, sentence) => {
  expect(says(cell)).toBe(sentence);
});

test("no call is pinned twice", () => {
  const cells = everyRefusal.map(([cell]) => cell);
  expect(cells).toEqual([...new Set(cells)]);
});

// A list of the words to choose from may be as long as it has to be: that of the drying models is the longest but for TYPICALRANGE's.
const LONGEST = 150;
const LONGEST_LIST = 167;

test.each(pinned)("%s names its argument first, ends with a full stop and stays near 150 characters: %s", (cell, sentence) => {
  const message = sentence.replace(/^#\S+ /, "");
  expect(message).toMatch(/^\w+( to \w+)?: .*\.$/);
  if (nameIn(cell) === "TYPICALRANGE" && / one of "/.test(message)) return;
  expect(message.length).toBeLessThanOrEqual(/ one of ("[^"]+", ){6}/.test(message) ? LONGEST_LIST : LONGEST);
});
