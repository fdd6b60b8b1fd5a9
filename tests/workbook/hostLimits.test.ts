// What the host documents: Microsoft, "Excel specifications and limits" (worksheet and workbook specifications), and for
// requests "Resource limits and performance optimization for Office Add-ins" (5 MB a request or response on the web).
import { ROWS_OF_A_SHEET } from "../../src/cells/Grid";
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import { SAMPLE_KINDS } from "../../src/runsheet/options/RunSheetOptions";
import { calculationRecord } from "../../src/sharing/record/calculationRecord";
import { demo } from "../../src/workbench/demo/demo";
import { demoRun } from "../../src/workbench/demo/orchardRun";
import { cellArea, cellAt } from "../../src/workbook/cellArea";
import { CELLS_A_REQUEST, QUESTIONS_A_REQUEST } from "../../src/workbook/excel/inRequests";
import { LONGEST_SHEET_NAME } from "../../src/workbook/freeSheetName";
import { pointsOf, ROW_HEIGHT, rowPixelsOf } from "../../src/workbook/grid/writing/worksheetData";
import type { SheetPlan } from "../../src/workbook/SheetPlan";

const ROWS = 1_048_576;
const COLUMNS = 16_384;

const options = {
  weighIns: 60,
  intervalMinutes: 20,
  readability: 0.00001,
  vessel: "x".repeat(60),
  replicates: 6,
  panZeros: true,
  temperatures: true,
};
const plans: readonly SheetPlan[] = [
  ...SAMPLE_KINDS.map((kind) => buildRunSheet({ ...options, kind })),
  ...demo,
  demoRun,
  calculationRecord({ sheet: "Run", copy: "Run values", date: "2026-03-14", formulaCells: [] }, "Run record"),
];

test("a whole column has 1,048,576 rows", () => {
  expect(ROWS_OF_A_SHEET).toBe(ROWS);
});

test("the last cell of a sheet is XFD1048576", () => {
  expect(cellAt(ROWS - 1, COLUMNS - 1)).toBe("XFD1048576");
  expect(cellArea("A1:XFD1048576")).toEqual({ row: 0, column: 0, rows: ROWS, columns: COLUMNS });
});

test("the name of a sheet has at most 31 characters", () => {
  expect(LONGEST_SHEET_NAME).toBe(31);
});

test("a row is at most 409 points high, and what is lower keeps its height", () => {
  expect(pointsOf(545)).toBe(408.75);
  expect(pointsOf(546)).toBe(409);
  expect(pointsOf(10_000)).toBe(409);
  expect(rowPixelsOf(pointsOf(ROW_HEIGHT))).toBe(ROW_HEIGHT);
});

describe.each(plans.map((plan) => [plan.name, plan] as const))("the planned sheet %s", (_name, plan) => {
  test("has columns between 1 and 255 characters wide, one for each that holds anything", () => {
    expect(plan.columnWidths.filter((width) => !(width >= 1 && width <= 255))).toEqual([]);
    const columns = plan.cells.map(({ cell }) => cellArea(cell)?.column ?? Number.NaN);
    expect(plan.columnWidths.length).toBeGreaterThan(Math.max(...columns));
  });

  test("has a name, texts and cell formulas of the lengths that the host takes", () => {
    expect(plan.name.length).toBeLessThanOrEqual(31);
    expect(plan.cells.filter(({ content }) => typeof content === "string" && content.length > 32_767)).toEqual([]);
    expect(plan.cells.filter(({ formula }) => (formula ?? "").length > 8192)).toEqual([]);
  });
});

test("a request of the most cells or questions stays below half of 5 MB", () => {
  const [bytesOfACell, bytesOfAQuestion] = [60, 700]; // as estimated beside the bounds
  expect(CELLS_A_REQUEST * bytesOfACell).toBeLessThanOrEqual(2_500_000);
  expect(QUESTIONS_A_REQUEST * bytesOfAQuestion).toBeLessThanOrEqual(2_500_000);
});
