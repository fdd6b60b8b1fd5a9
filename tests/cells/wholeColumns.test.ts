import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem } from "../../src/cells/CellProblem";
import { ROWS_OF_A_SHEET } from "../../src/cells/Grid";
import { cellFunction } from "../../src/functions/cellFunction";
import { rowCounted } from "../../src/inputs/column";
import { replicateValues } from "../../src/inputs/kinds/statistics";
import { mass } from "../../src/inputs/kinds/weighings";

// Excel specifications and limits, worksheet size: 1,048,576 rows by 16,384 columns.
const PRINTED = "1,048,576";
const ROWS = Number(PRINTED.replaceAll(",", ""));

const described = { summary: "A test function [g].", result: { about: "Rows", unit: "" }, examples: [], source: "made for tests" } as const;

const double = cellFunction({ ...described, name: "DOUBLE", inputs: { gross: mass("Gross [g].") }, compute: ({ gross }) => 2 * gross });
const rowsGiven = cellFunction({
  ...described,
  name: "ROWSGIVEN",
  inputs: { values: rowCounted(replicateValues("Values.")) },
  compute: ({ values }) => values.rows,
});

const column = (length: number, ...cells: readonly number[]): unknown[][] => {
  const rows = new Array<unknown[]>(length).fill([0]);
  cells.forEach((cell, row) => (rows[row] = [cell]));
  return rows;
};

test("a sheet has as many rows as its maker prints", () => {
  expect(ROWS_OF_A_SHEET).toBe(ROWS);
});

test("a column of every row of the sheet is answered as far as it is filled", () => {
  expect(callCellFunction(double, [column(ROWS, 1, 0, 3)])).toEqual([[2], [""], [6]]);
  expect(callCellFunction(rowsGiven, [column(ROWS, 1, 0, 3)])).toBe(3);
});

test("a column of one row fewer is a range like any other: every row is answered", () => {
  const answer = callCellFunction(double, [column(ROWS - 1, 1, 0, 3)]);
  expect(Array.isArray(answer) && answer.length).toBe(ROWS - 1);
  expect(callCellFunction(rowsGiven, [column(ROWS - 1, 1, 0, 3)])).toBe(ROWS - 1);
});

test("a column of every row with nothing in it is answered in its first row alone", () => {
  expect(callCellFunction(double, [column(ROWS)])).toEqual([[""]]);
});

test("the last row of the sheet counts as well as the first", () => {
  const answer = callCellFunction(double, [[...column(ROWS - 1), [4]]]);
  expect(Array.isArray(answer) && [answer.length, answer.at(-1)]).toEqual([ROWS, [8]]);
});

test("a whole column beside a range that stops short is refused, naming both", () => {
  const difference = cellFunction({
    ...described,
    name: "DIFFERENCE",
    inputs: { vessel: mass("Vessel [g]."), gross: mass("Gross [g].") },
    compute: ({ vessel, gross }) => gross - vessel,
  });
  expect(callCellFunction(difference, [column(ROWS, 1, 1), column(2, 5, 6)])).toEqual(
    new CellProblem("#VALUE!", "gross: 2 rows by 1 column does not fit vessel, 1048576 rows by 1 column. Give ranges of one size.", "gross"),
  );
});
