import { handsOnCell } from "../../src/inputs/handsOnCell";
import { isNumberInCells } from "../../src/inputs/refusedInCells";

test.each([
  '(IF(D1>0,A1,""))',
  'IFERROR(A1,"tared")',
  "((INDEX(A1:A2,1)))",
  "(+CHOOSE(1,A1,2))",
  "(OFFSET('a (b'!A1,0,0))",
  '(IF(D1=")",A1,1))',
  "(A2)",
  "('It''s'!$A$2)",
  "(A1:A4)",
])("%s may give a truth that a cell holds, and is asked for it", (text) => {
  expect(handsOnCell(text)).toBe(true);
  expect(isNumberInCells(text)).toBe(`ISNUMBER(${text})>ISLOGICAL(${text})`);
});

test.each(["(IF(D1>0,A1,0)*2)", "(IF(A1,1,2)+IF(A2,1,2))", "(SUM(A1:A2))", "(A1*1)", "(1.5)", '"text"', "{1;2}", "-A1", "(-A1)", "(ROUND(A1,2))"])(
  "%s is calculated, and no spreadsheet tells whether a truth was in it",
  (text) => {
    expect(handsOnCell(text)).toBe(false);
    expect(isNumberInCells(text)).toBe(`ISNUMBER(${text})`);
  },
);
