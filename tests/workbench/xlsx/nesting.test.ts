import { formulaTooNested } from "../../../src/problems/files/fileProblems";
import { Findings } from "../../../src/workbench/xlsx/reading/Findings";
import { FormulaReader } from "../../../src/workbench/xlsx/reading/FormulaReader";
import { isTooNested } from "../../../src/workbook/grid/typing/nesting";
import { engineKnows } from "../../../src/workbench/xlsx/reading/notCalculated";

test.each([
  ["brackets", `${"-(".repeat(2700)}1${")".repeat(2700)}`],
  ["functions", `${"ABS(".repeat(501)}1${")".repeat(501)}`],
  ["powers in a row", `${"1^".repeat(4000)}1`],
])("a formula of too many %s is refused before the grid is given it", (_, text) => {
  const reader = new FormulaReader({ names: new Set(), tables: [], engine: engineKnows([]), findings: new Findings() });
  expect(() => reader.formula(text, {}, { sheet: "Kiln", row: 0, column: 0 } as never)).toThrow(formulaTooNested(500, 3000));
});

test("says what to do", () => {
  expect(formulaTooNested(500, 3000)).toContain(
    "This workbook holds a cell formula with more than 500 brackets within one another or more than 3000 operators",
  );
});

test.each([
  ["as many brackets as are taken", `${"(".repeat(500)}1${")".repeat(500)}`],
  ["brackets beside one another", "(1)+".repeat(1600) + "1"],
  ["the longest sum of cells", "A1+".repeat(2730) + "1"],
  ["brackets and signs within a text or a sheet's name", `LEN("${"(+".repeat(3500)}")+'a (b'!A1`],
])("%s stay as they are", (_, text) => expect(isTooNested(text)).toBe(false));
