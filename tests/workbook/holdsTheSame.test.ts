import { holdsTheSame, typedCells } from "../../src/workbook/holdsTheSame";
import type { CellReading, RangeReading } from "../../src/workbook/Workbook";
import { reading } from "../sharing/MemoryWorkbook";

const moisture = reading("B4", { formula: "=RETORT.MOISTURE.WET(B1,B2,B3)", value: 0.35 });
const given = (...cells: readonly CellReading[]): RangeReading => ({ sheet: "Tin 3", range: "A1", rows: [[...cells]] });

describe("holdsTheSame(one, other)", () => {
  test.each<[string, boolean, CellReading, CellReading]>([
    ["a formula that comes to something else", true, moisture, { ...moisture, value: 0.4 }],
    ["another formula", false, moisture, { ...moisture, formula: "=1" }],
    ["another number", false, reading("B1", { value: 25 }), reading("B1", { value: 26 })],
    ["a number in another cell", false, reading("B1", { value: 25 }), reading("B2", { value: 25 })],
    ["a cell that was cleared", false, reading("B1", { value: 25 }), reading("B1", {})],
  ])("of %s is %s", (_what, same, one, other) => expect(holdsTheSame(given(one), given(other))).toBe(same));

  test("takes the cells that a spill fills for part of what its formula comes to", () => {
    const spill = reading("D1", { formula: "=RETORT.ATOMS(B1)", value: "Element", spill: "D1:D2" });
    expect(holdsTheSame(given(spill, reading("D2", { value: "C" })), given(spill, reading("D2", { value: "H" })))).toBe(true);
  });
});

test("typedCells(reading) gives formulas and values under their cells, a typed empty text among them", () => {
  expect([...typedCells(given(moisture, reading("B1", { value: 0 }), reading("B2", { value: "" }), reading("B3", {})))]).toEqual([
    ["B4", "=RETORT.MOISTURE.WET(B1,B2,B3)"],
    ["B1", 0],
    ["B2", ""],
  ]);
});
