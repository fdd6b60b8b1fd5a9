// Calls in plain cells, calculated by two independent spreadsheets and set against the functions themselves: thousands of good and bad inputs,
// in cells and typed. Where a function refuses, the plain cell must show an error, and where it answers, its answer.
import { Workbook as Book, type Workbook } from "exceljs";
import { CellProblem } from "../../src/cells/CellProblem";
import { everyFunction } from "../../src/functions/catalogue";
import { plainFormula } from "../../src/sharing/plain/plainFormula";
import { WorkingsSheet } from "../../src/sharing/plain/WorkingsSheet";
import { cellAt } from "../../src/workbook/cellArea";
import type { CellReading } from "../../src/workbook/Workbook";
import { storedFormula } from "../../src/xlsx/formulas/storedFormula";
import { agrees, caseBook, codeShown, differences, type Compared } from "./caseBook";
import { nestedTables, nestingFunctions } from "./nestedTables";
import { hasPlainForm, plainCases } from "./plainCases";
import { PROGRAMS, recalculatedBy } from "./recalculated";

jest.setTimeout(900_000);

const withForm = everyFunction.filter(hasPlainForm).map(({ name }) => name);
const { file, compared } = caseBook(plainCases());
const isRefused = ({ ours }: Compared): boolean => ours instanceof CellProblem;

test("there are thousands of good and bad inputs to try, and some of each for every function with a plain form", () => {
  expect(compared.filter(isRefused).length).toBeGreaterThan(10_000);
  expect(compared.filter((one) => !isRefused(one)).length).toBeGreaterThan(4_000);
  const without = (wanted: boolean): string[] => withForm.filter((name) => !compared.some((one) => one.sheet === name && isRefused(one) === wanted));
  expect({ withoutBad: without(true), withoutGood: without(false) }).toEqual({ withoutBad: [], withoutGood: [] });
});

const nested = nestedTables(3);
const NESTED = "Tables in INDEX";

/** Tables within INDEX on a sheet of its own, in plain cells, without any stored answers. */
function nestedBook(): Workbook {
  const [book, workings] = [new Book(), new WorkingsSheet("Workings")];
  const sheet = book.addWorksheet(NESTED);
  for (const { inputs, formulas } of nested) {
    for (const [cell, value] of Object.entries(inputs)) sheet.getCell(cell).value = value;
    const heldAt = (_: string, row: number, column: number): CellReading | undefined => {
      const cell = cellAt(row, column);
      const value = inputs[cell];
      return value === undefined ? undefined : { cell, value, formula: "", shown: String(value), error: "", message: "", spill: "" };
    };
    for (const [cell, formula] of Object.entries(formulas)) {
      const place = { sheet: NESTED, cell, area: cell, nameOf: () => undefined, tableOf: () => undefined, spillOf: () => undefined, heldAt };
      const plain = plainFormula(formula, place, {}, workings);
      if (plain.kind !== "formula") throw new Error(`${formula}: ${plain.kind}`);
      sheet.getCell(cell).value = { formula: storedFormula(plain.formula) };
    }
  }
  const steps = book.addWorksheet(workings.name);
  for (const { cell, content } of workings.cells) steps.getCell(cell).value = content.startsWith("=") ? { formula: storedFormula(content) } : content;
  return book;
}

test.each(PROGRAMS)("a table within INDEX is calculated by %s from the cells of its own sheet", async (program) => {
  const back = (await recalculatedBy(program, nestedBook())).getWorksheet(NESTED);
  const different = nested.flatMap(({ formulas, wanted }) =>
    Object.entries(formulas).flatMap(([cell, formula]) => {
      const other: unknown = back?.getCell(cell).result;
      return agrees(other, wanted[cell] ?? "") ? [] : [{ formula, other: codeShown(other), ours: wanted[cell] }];
    }),
  );
  expect(different).toEqual([]);
  expect(nested.flatMap(({ formulas }) => Object.keys(formulas)).length).toBeGreaterThan(3 * nestingFunctions.length);
});

describe.each(PROGRAMS)("%s", (program) => {
  let back: Workbook;
  beforeAll(async () => {
    back = await recalculatedBy(program, file);
  });

  test.each(withForm)("%s in plain cells answers and refuses as the function does", (name) => {
    const different = compared
      .filter(({ sheet }) => sheet === name)
      .flatMap((one) => {
        const found = differences(back, one);
        return found === undefined ? [] : [{ call: one.call, form: one.form, ...found }];
      });
    expect(different).toEqual([]);
  });
});
