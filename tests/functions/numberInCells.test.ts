import { numberInCells } from "../../src/functions/numberInCells";

test.each([
  ["", 2, "2"],
  ['"tared"', 0, "0"],
  ["0.05", 0, "0.05"],
  ["B2", 0, "IF(ISNUMBER(B2),B2,0)"],
  ["0", 1.2, "1.2"],
  ["B2:B9", 1.2, "IF(ISNUMBER(B2:B9),IF(B2:B9=0,1.2,B2:B9),1.2)"],
])("numberInCells(%j, %d) is %s", (text, otherwise, expected) => {
  expect(numberInCells(text, otherwise)).toBe(expected);
});
