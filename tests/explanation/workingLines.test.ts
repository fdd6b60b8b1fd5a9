import { workingLines } from "../../src/explanation/workingLines";
import type { Worked } from "../../src/explanation/workOut";
import type { CellFunction } from "../../src/functions/cellFunction";
import type { Input } from "../../src/inputs/Input";
import { BLANK, CellError, type CellValue } from "../../src/inputs/CellValue";

const input = (shape: "cell" | "column"): Input<unknown> => ({
  shape,
  called: "mass",
  about: "",
  unit: "g",
  optional: true,
  zero: "nothing",
  isBlank: () => false,
  read: () => 0,
});
const made: CellFunction = {
  gives: "value",
  name: "MADE",
  summary: "",
  inputs: { one: input("cell"), other: input("cell"), all: input("column") },
  result: { about: "", unit: "g" },
  compute: () => 1,
  inCells: ({ one, other, all }) => `${one || "-"}|${other || "-"}|${all || "-"}`,
  examples: [],
  source: "",
};

type Given = readonly [text: string, cells: readonly (readonly CellValue[])[] | undefined];
const worked = (...given: readonly Given[]): Worked => ({
  given: given.map(([text, cells]) => ({ text, cells, expression: undefined })),
  blankAs: 0,
  answer: 1,
});

describe("workingLines(definition, worked, position, result) of a function without arithmetic of its own", () => {
  test.each<[string, Given[], string]>([
    ["a number without rounding residue", [["B1", [[0.1 + 0.2]]]], "0.3|-|- = 1 g"],
    ["text in quotation marks, its own doubled", [["B1", [['a "dry" tin']]]], '"a ""dry"" tin"|-|- = 1 g'],
    ["TRUE and errors as typed", [["B1", [[true]]], ["B2", [[new CellError("#N/A")]]]], "B1|B2|- = 1 g"],
    ["a blank cell as typed", [["B1", [[BLANK]]]], "B1|-|- = 1 g"],
    ["a column as typed", [["", undefined], ["7", [[7]]], ["C1:C2", [[1], [2]]]], "-|7|C1:C2 = 1 g"],
    ["nothing for what only the spreadsheet can work out", [["SUM(B:B)", undefined]], "-|-|- = 1 g"],
  ])("puts in %s", (_what, given, line) => {
    expect(workingLines(made, worked(...given), undefined, "1 g")).toEqual([line]);
  }); // prettier-ignore

  test("puts in the values of the row and column that is explained", () => {
    const given = worked(["B1:C2", [[1, 2], [3, 4]]], ["D1:D2", [[5], [6]]]); // prettier-ignore
    expect(workingLines(made, given, { row: 1, column: 1 }, "1 g")).toEqual(["4|6|- = 1 g"]);
    expect(workingLines(made, given, undefined, "1 g")).toEqual(["1|5|- = 1 g"]);
  });

  test("has none where the function has no built-in form either", () => {
    const bare = { ...made };
    Reflect.deleteProperty(bare, "inCells");
    expect(workingLines(bare, worked(["B1", [[1]]]), undefined, "1 g")).toEqual([]);
  });
});
