// Calls in plain cells, calculated by two independent spreadsheets and set against the functions themselves: thousands of good and bad inputs,
// in cells and typed. Where a function refuses, the plain cell must show an error, and where it answers, its answer.
import type { Workbook } from "exceljs";
import { CellProblem } from "../../src/cells/CellProblem";
import { everyFunction } from "../../src/functions/catalogue";
import { caseBook, differences, type Compared } from "./caseBook";
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
