import { demo as openedOn } from "../../../src/workbench/demo/demo";
import { demoRun } from "../../../src/workbench/demo/orchardRun";
import { gridSheet, replaceSheets } from "../../../src/workbook/grid/writing/GridSheet";
import type { CellReading } from "../../../src/workbook/Workbook";
import { leavesArgumentOut } from "../../leavesArgumentOut";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../headlessWorkbook";

jest.setTimeout(30_000);

const demo = [...openedOn, demoRun];

let open: HeadlessWorkbook;
const cells = new Map<string, CellReading>();
beforeAll(async () => {
  open = await openHeadlessWorkbook();
  await replaceSheets(
    open.engine,
    demo.map((plan) => gridSheet(plan, plan.name)),
  );
  for (const { name } of demo) {
    for (const cell of (await open.workbook.readUsed(name)).rows.flat()) cells.set(`${name}!${cell.cell}`, cell);
  }
});
afterAll(() => open?.close());

const valueOf = (cell: string): unknown => cells.get(`Orchard kiln!${cell}`)?.value;

// The arithmetic of the run, written out: 212.4 g tin, 262.85 g with moist shells, 255.98 g dry, 225.14 g char, 212.83 g ash.
const MOIST = 262.85 - 212.4;
const DRY = 255.98 - 212.4;
const CHAR = 225.14 - 212.4;
const ASH = 212.83 - 212.4;

test.each([
  ["moisture, wet basis", "B24", (MOIST - DRY) / MOIST],
  ["moisture, dry basis", "B25", (MOIST - DRY) / DRY],
  ["volatile fraction", "B26", (DRY - CHAR) / DRY],
  ["ash-free char yield", "B27", (CHAR - ASH) / (DRY - ASH)],
])("the kiln run's %s is what its weighings say", (_what, cell, expected) => {
  expect(valueOf(cell)).toBeCloseTo(expected, 12);
});

test("the kiln run is steady from weighing 6: 0.03 g of 43.59 g is below 0.1 %, 0.12 g of 43.62 g is not", () => {
  expect(valueOf("B23")).toBe(6);
});

test("the comparison closes: what goes in comes out, charred and burned", () => {
  expect(valueOf("B43")).toBeCloseTo(valueOf("B36") as number, 9);
  expect(valueOf("D43")).toBeCloseTo(valueOf("D36") as number, 9);
  expect(valueOf("A36")).toBe("In, together");
  expect(valueOf("A43")).toBe("Out, together");
});

test("the run sheet tells its answer as worked out by hand, with every check in order", () => {
  const head = (cell: string): unknown => cells.get(`Orchard run!${cell}`)?.value;
  // Dry 20.85, 20.45, 21.41 g; char 47.85 - 41.87, 47.94 - 42.13, 47.68 - 41.57 = 5.98, 5.81, 6.11 g: left 0.713189, 0.715892, 0.714619.
  // Mean 0.714567, s = 0.0013525: 4.302653 * 0.0013525 / sqrt 3 = 0.0033598
  expect(head("A2")).toBe("71.46 % ± 0.34 % (95 %) of the dry plum prunings left as vapour; 28.54 % stayed. Mean of 3 samples.");
  expect([head("D1"), head("A3")]).toEqual(["Run complete: all weighings are in", "✓ All 16 checks are in order."]);
  // 2.66406 * 48.6 + 7.93601 * 6 - 42.8 = 134.3 g; 3.66406 * 48.6 + 8.93601 * 6 + 0.5 = 232.2 g
  expect(head("A5")).toBe("Of 100 g dry, closed: 71.5 g left as vapour. Burnt openly: 134 ± 4 g oxygen in, 232 ± 5 g gases out (95 %).");
});

test("no formula leaves an argument out between commas", () => {
  const formulas = demo.flatMap((plan) => plan.cells.map(({ formula = "" }) => formula)).filter((formula) => formula !== "");
  expect(formulas.length).toBeGreaterThan(20);
  expect(formulas.filter(leavesArgumentOut)).toEqual([]);
});

test("only the cells that are wrong on purpose show an error, each with its sentence", () => {
  const errors = [...cells].filter(([, { error }]) => error !== "").map(([place, { error, message }]) => [place, error, message]);
  expect(errors).toEqual([
    ["Orchard kiln!B30", "#VALUE!", "dry: 262.85 g is more than moist, 255.98 g. Check for swapped cells or regained moisture."],
    [
      "Salts class!C11",
      "#VALUE!",
      'formula: "H20" at character 8 of "CuSO4·5H20" holds the digit 0. For oxygen type the letter O; for that count type (H)20.',
    ],
  ]);
});

test("every sheet says that it is invented", () => {
  const says = (sheet: string): unknown[] => [...cells].filter(([place]) => place.startsWith(`${sheet}!`)).map(([, { value }]) => value);
  for (const { name } of demo) expect(says(name)).toContainEqual(expect.stringMatching(/^Invented: .* made up/));
});

test("large titles and headings that wrap, spilled ones too, get rows high enough for their lines", () => {
  const heights = (sheet: string, row: number) => open.engine.book.getSheetByName(sheet)?.getRowHeight(row - 1);
  expect(heights("Orchard kiln", 4)).toBe(22);
  expect(heights("Orchard kiln", 1)).toBe(27);
  expect(heights("Orchard kiln", 33)).toBeGreaterThan(50);
  expect(heights("Salts class", 5)).toBeGreaterThan(50);
});
