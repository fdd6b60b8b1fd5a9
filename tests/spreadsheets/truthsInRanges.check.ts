// A truth among the cells of a range is refused in its row, as the functions refuse it, by every form that works on ranges; no other row is.
import { Workbook } from "exceljs";
import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem } from "../../src/cells/CellProblem";
import { everyFunction } from "../../src/functions/catalogue";
import { takesRanges, type CellFunction } from "../../src/functions/cellFunction";
import { plainFormula } from "../../src/sharing/plain/plainFormula";
import { WorkingsSheet } from "../../src/sharing/plain/WorkingsSheet";
import { cellAt, rangeOf } from "../../src/workbook/cellArea";
import { storedFormula } from "../../src/xlsx/formulas/storedFormula";
import { argumentCases } from "./argumentCases";
import { agrees, codeShown } from "./caseBook";
import { PROGRAMS, recalculatedBy } from "./recalculated";

jest.setTimeout(900_000);

const [SHEET, WORKINGS] = ["Tray", "Workings"];
/**
 * What stands in one argument of each row, the first as it should be: typed, worked out, and worked out from such a cell. LibreOffice shows 0 for a text
 * below an error of FIXED, so that no good row stands there.
 */
const AMONG = [undefined, true, { formula: "1<2" }, false, { formula: "$A$1" }] as const;
const ANSWER_COLUMN = 20;
const COUNT_COLUMN = 22;
const EVERY_ROWS = AMONG.length + 1;

interface Asked {
  readonly call: string;
  readonly row: number;
  readonly rows: readonly unknown[];
}

const withRanges = everyFunction.filter((one) => takesRanges(one) && one.inCells !== undefined);

function truthsBook(): { readonly file: Workbook; readonly asked: readonly Asked[] } {
  const file = new Workbook();
  const sheet = file.addWorksheet(SHEET);
  sheet.getCell("A1").value = true;
  const workings = new WorkingsSheet(WORKINGS);
  const asked: Asked[] = [];
  for (const definition of withRanges) {
    for (const [place, raw] of placesOf(definition)) {
      const row = 3 + asked.length * EVERY_ROWS;
      const rows = AMONG.map((one) => raw.map((value, index) => (index === place && one !== undefined ? one : value)));
      rows.forEach((values, down) =>
        values.forEach((value, across) => value !== null && (sheet.getCell(row + down, across + 1).value = value as number | string | boolean)),
      );
      const ranges = raw.map((value, index) => (value === null ? "" : rangeOf({ row: row - 1, column: index, rows: rows.length, columns: 1 })));
      const call = `RETORT.${definition.name}(${ranges.join(",")})`;
      const area = rangeOf({ row: row - 1, column: ANSWER_COLUMN - 1, rows: rows.length, columns: 1 });
      const here = { sheet: SHEET, nameOf: () => undefined, tableOf: () => undefined, spillOf: () => undefined };
      const first = area.split(":")[0] ?? "";
      const plain = plainFormula(`=${call}`, { ...here, cell: first, area }, {}, workings);
      const last = cellAt(row - 1, COUNT_COLUMN - 1);
      const sum = plainFormula(`=COUNT(${call})`, { ...here, cell: last, area: last }, {}, workings);
      if (plain.kind !== "formula" || sum.kind !== "formula") throw new Error(`${call} has no form over ranges.`);
      sheet.getCell(first).value = { formula: storedFormula(plain.formula), shareType: "array", ref: area };
      sheet.getCell(last).value = { formula: storedFormula(sum.formula), shareType: "array", ref: last };
      const meant = rows.map((values) => values.map((value) => (typeof value === "object" && value !== null ? true : value)));
      asked.push({ call, row, rows: meant.map((values) => ([callCellFunction(definition, values)] as unknown[][][]).flat(2)[0]) });
    }
  }
  const steps = file.addWorksheet(WORKINGS);
  for (const { cell, content } of workings.cells) steps.getCell(cell).value = content.startsWith("=") ? { formula: storedFormula(content) } : content;
  return { file, asked };
}

/** Each argument that is a number of its own, with arguments that the function takes; a 1 or 0 beside truths is refused where those are numbers. */
function placesOf(definition: CellFunction): (readonly [number, readonly unknown[]])[] {
  return Object.values(definition.inputs).flatMap((input, place) => {
    if (input.shape !== "cell" || (input.takes?.kind !== "number" && input.takes?.kind !== "choice")) return [];
    const good = argumentCases(definition.name).find((raw) => {
      const value = raw[place];
      return value !== null && value !== undefined && value !== 0 && value !== 1 && !(callCellFunction(definition, raw) instanceof CellProblem);
    });
    return good === undefined ? [] : [[place, good] as const];
  });
}

test.each(PROGRAMS)("%s refuses each truth in a range and no number beside it", async (program) => {
  const { file, asked } = truthsBook();
  const sheet = (await recalculatedBy(program, file)).getWorksheet(SHEET);
  const shownIn = (row: number, column: number): unknown => {
    const { result, value } = sheet?.getCell(row, column) ?? {};
    return result ?? value;
  };
  const wrong = asked.flatMap(({ call, row, rows }) => {
    const shown = rows.map((_, down) => shownIn(row + down, ANSWER_COLUMN));
    const numbers = rows.filter((one) => typeof one === "number").length;
    const counted = shownIn(row, COUNT_COLUMN);
    const isRight = rows.every((one, down) => agrees(shown[down], one as number)) && counted === numbers;
    return isRight ? [] : [{ call, shown: shown.map(codeShown), rows: rows.map((one) => (one instanceof CellProblem ? one.code : one)), counted }];
  });
  expect(wrong).toEqual([]);
  expect(asked.length).toBeGreaterThan(100);
});
