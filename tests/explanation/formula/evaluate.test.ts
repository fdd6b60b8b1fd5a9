import { evaluate } from "../../../src/explanation/formula/evaluate";
import { expressionOf } from "../../../src/explanation/formula/expressionOf";
import { referredAmong } from "../../../src/explanation/formula/readReferences";
import { BLANK, CellError, type CellValue } from "../../../src/inputs/CellValue";

const cells = new Map<string, readonly (readonly CellValue[])[]>([
  ["Run!A1", [[BLANK]]],
  ["Run!A2", [["7"]]],
  ["Run!A3", [[new CellError("#N/A")]]],
  ["Run!B1:B2", [[1], [2]]],
]);

const worked = (typed: string): unknown => {
  const expression = expressionOf(typed);
  return expression && evaluate(expression, { referred: referredAmong(cells, "Run"), blankAs: 0 });
};

describe("evaluate(expression, around) as a spreadsheet does", () => {
  // Order of operators: unary minus before ^, % before ^, & last (ISO/IEC 29500-1, 18.17.2.2, from memory).
  test.each<[string, CellValue]>([
    ["-2^2", 4],
    ["2^-1", 0.5],
    ["2+3*4", 14],
    ["(2+3)*4", 20],
    ["10-2-3", 5],
    ["2^3^2", 64],
    ["50%*4", 2],
    ["-50%", -0.5],
    ['1+1&"g"', "2g"],
    ['0.1+0.2&""', "0.3"],
    ["TRUE+1", 2],
    ["A1+1", 1],
    ['A1&"x"', "x"],
    ["A2*2", 14],
    ["+A2", "7"],
    ["@A2", "7"],
  ])("%s is %p", (typed, value) => {
    expect(worked(typed)).toEqual([[value]]);
  });

  test.each([
    ["1/0", "#DIV/0!"],
    ["0^0", "#NUM!"],
    ["(-8)^0.5", "#NUM!"],
    ["10^400", "#NUM!"],
    ['"tin"*2', "#VALUE!"],
    ['""+1', "#VALUE!"],
    ["A3+1", "#N/A"],
    ["-A3", "#N/A"],
    ['A3&"x"', "#N/A"],
    ["#REF!", "#REF!"],
  ])("%s is the error %s", (typed, code) => {
    expect(worked(typed)).toEqual([[new CellError(code)]]);
  });

  test("works cell by cell, a single row or column serving all", () => {
    expect(worked("B1:B2*{10,20}")).toEqual([
      [10, 20],
      [20, 40],
    ]);
    expect(worked("{1;2;3}+B1:B2")).toEqual([[2], [4], [new CellError("#N/A")]]);
  });

  test.each(["SUM(B1:B2)", "IF(1,2,3)", "price*2", "Table1[Mass]", "B1:B2=1", "[Book2]Run!A1", "LET(x,1,x)", "2*(", "@B1:B2"])(
    "leaves %s to the spreadsheet",
    (typed) => {
      expect(worked(typed)).toBeUndefined();
    },
  );
});
