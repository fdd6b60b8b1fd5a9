import { operand } from "../../src/functions/operand";
import { wordInCells } from "../../src/functions/wordInCells";

test.each([
  ["B2", "B2"],
  ["$B$2:$B$9", "$B$2:$B$9"],
  ["Run1!B2", "Run1!B2"],
  ["0.35", "0.35"],
  ["B2-0.1", "(B2-0.1)"],
  ["-0.1", "(-0.1)"],
  ["35%", "(35%)"],
])("operand(%j) is %s", (text, expected) => {
  expect(operand(text)).toBe(expected);
});

test.each([
  ["", "z"],
  ['"Wet"', "x"],
  ['" dry "', "y"],
  ['"damp"', "z"],
  ["B2", 'IF(TRIM(B2)="wet",x,IF(TRIM(B2)="dry",y,z))'],
])("wordInCells(%j) is %s", (text, expected) => {
  const cases = [
    ["wet", "x"],
    ["dry", "y"],
  ] as const;
  expect(wordInCells(text, cases, "z")).toBe(expected);
});
