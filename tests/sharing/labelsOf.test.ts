import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import { openFireWords } from "../../src/runsheet/words/openFireWords";
import { labelsOf } from "../../src/sharing/labelsOf";
import { areaNamed } from "../../src/workbook/areaNamed";
import { cellAt } from "../../src/workbook/cellArea";
import type { CellContent, CellReading } from "../../src/workbook/Workbook";

const reading = (content: CellContent, row: number, column: number): CellReading => {
  const formula = typeof content === "string" && content.startsWith("=") ? content : "";
  const value = formula === "" ? content : 1;
  return { cell: cellAt(row, column), formula, value, shown: String(value ?? ""), error: "", message: "", spill: "" };
};
const sheet: readonly (readonly CellReading[])[] = [
  ["Moisture", "=B4", "by oven", "=C4"],
  [null, "=B4", null, null],
  ["Weigh-in", "Grams", "Steady", null],
  [1, 35, "=B4>1", "=B4"],
  [2, "pasted", "=B5>1", null],
].map((row, down) => row.map((content, across) => reading(content, down, across)));
const COMPARED_WORDS = Object.values(openFireWords.compared);
const cell = (row: number, column: number): CellReading => sheet[row]?.[column] as CellReading;

describe("labelsOf(reading)(cell)", () => {
  it.each([
    ["gives the words in column A of the row, however far left", 0, 3, "Moisture"],
    ["gives the heading above and the row's number where the rows are numbered", 4, 2, "Steady, 2"],
    ["gives nothing where the row has no words and no number", 1, 1, ""],
    ["gives nothing for a numbered row in a column without a heading", 3, 3, ""],
  ])("%s", (_, row, column, label) => {
    expect(labelsOf({ rows: sheet })(cell(row, column))).toBe(label);
  });

  it("takes only printed words for a heading: no number, no text that a formula gives, no empty text", () => {
    const column: CellContent[] = ["Grams", 35, "=B2", ""];
    const table = [...column, "=B2"].map((content, row) => [reading(row === 0 ? "Weigh-in" : row, row, 0), reading(content, row, 1)]);
    const texts = table.map((row) => row.map((one) => (one.formula !== "" && one.cell === "B3" ? { ...one, value: "dry", shown: "dry" } : one)));
    expect(labelsOf({ rows: texts })(texts[4]?.[1] as CellReading)).toBe("Grams, 4");
  });

  it("gives nothing for a spill, whose first row may be headings", () => {
    expect(labelsOf({ rows: sheet })({ ...cell(0, 1), spill: "B1:C4" })).toBe("");
  });
});

test("the grams of the comparison with open burning have the words after them, not the label of the box beside them", () => {
  const plan = buildRunSheet({ kind: "charring", weighIns: 3, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: 2 });
  const rows: CellReading[][] = [];
  for (const { cell: at, content, formula } of plan.cells) {
    const { row, column } = areaNamed(at);
    const line = (rows[row] ??= []);
    line[column] = {
      cell: at,
      formula: formula ?? "",
      value: formula === undefined ? (content ?? null) : 1,
      shown: "",
      error: "",
      message: "",
      spill: "",
    };
  }
  const blank = (row: number, column: number): CellReading => reading(null, row, column);
  const whole = Array.from(rows, (line, row) => Array.from({ length: 20 }, (_, column) => line?.[column] ?? blank(row, column)));
  const labelOf = labelsOf({ rows: whole });
  const carbon = whole.findIndex(([first]) => first?.value === "Carbon, %");
  expect(COMPARED_WORDS.map((_, index) => labelOf(whole[carbon + index]?.[6] as CellReading))).toEqual(
    COMPARED_WORDS.map((words) => `${words}, 2 grams`),
  );
  expect(labelOf(whole[carbon]?.[1] as CellReading)).toBe("Carbon, %");
});
