import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import { KINDS } from "../../src/runsheet/kinds";
import type { RunKind } from "../../src/runsheet/options/RunSheetOptions";
import { circles } from "../../src/sharing/circles";
import type { CellReading, RangeReading } from "../../src/workbook/Workbook";

const reading = (cell: string, formula: string, spill = ""): CellReading => ({ cell, formula, value: 0, shown: "0", error: "", message: "", spill });

const sheet = (name: string, formulas: Readonly<Record<string, string>>): RangeReading => ({
  sheet: name,
  range: "A1:Z99",
  rows: Object.entries(formulas).map(([cell, formula]) => [reading(cell, formula)]),
});

const found = (...sheets: readonly RangeReading[]): string[] => circles(sheets).map((one) => `${one.sheet}!${one.cell}`);

test.each(Object.keys(KINDS) as RunKind[])("no circle is found in a run sheet of %s", (kind) => {
  const plan = buildRunSheet({ kind, weighIns: 5, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: kind === "balance" ? 1 : 2 });
  const formulas = plan.cells.flatMap(({ cell, formula }) => (formula === undefined ? [] : [[cell, formula] as const]));
  expect(found(sheet(plan.name, Object.fromEntries(formulas)))).toEqual([]);
});

describe("circles(sheets)", () => {
  test.each<[string, Record<string, string>, string[]]>([
    ["a cell that reads itself", { A1: "=A1+1" }, ["A1"]],
    ["a total that counts itself", { A1: "=1", A2: "=SUM(A1:A2)" }, ["A2"]],
    ["a whole column with its total in it", { B1: "=1", B9: "=SUM(B:B)" }, ["B9"]],
    ["three cells, and not the one that reads them", { A1: "=B1", B1: "=C1*2", C1: "=A1", D1: "=C1" }, ["A1", "B1", "C1"]],
    ["a circle through a call of ours", { A1: "=D1*0", D1: "=RETORT.MOISTURE.WET(A1,B1,C1)" }, ["A1", "D1"]],
    ["two circles that share a cell", { A1: "=B1+C1", B1: "=A1", C1: "=A1" }, ["A1", "B1", "C1"]],
  ])("finds %s", (_, formulas, cells) => {
    expect(found(sheet("Tray", formulas))).toEqual(cells.map((cell) => `Tray!${cell}`));
  });

  test.each<[string, Record<string, string>]>([
    ["a long chain", Object.fromEntries(Array.from({ length: 3000 }, (_, row) => [`A${row + 2}`, `=A${row + 1}+1`]))],
    ["running sums", Object.fromEntries(Array.from({ length: 2000 }, (_, row) => [`B${row + 1}`, `=SUM(A$1:A${row + 1})`]))],
    ["numbering by places", { A1: "=ROW(A1)", A2: "=ROWS(A$1:A2)", B1: "=COLUMNS($A1:B1)", C1: "=COLUMN(C1)*2", D1: "=ISFORMULA(D1)" }],
    ["a text that reads like a reference", { A1: '="A1"&"(A1)"' }],
    ["another workbook's cell of the same name", { A1: "=[1]Tray!A1" }],
  ])("finds none in %s", (_, formulas) => {
    expect(found(sheet("Tray", formulas))).toEqual([]);
  });

  test("goes from sheet to sheet, whatever they are called", () => {
    expect(found(sheet("It's (a)", { A1: "=Other!B2" }), sheet("Other", { B2: "='It''s (a)'!A1", C2: "=B3" }))).toEqual(["It's (a)!A1", "Other!B2"]);
  });

  test("counts every cell that a spill fills", () => {
    const rows = [[reading("A1", "=B1:B3*2", "A1:A3"), reading("B2", "=A3")]];
    expect(circles([{ sheet: "Tray", range: "A1:B3", rows }])).toEqual([
      { sheet: "Tray", cell: "A1" },
      { sheet: "Tray", cell: "B2" },
    ]);
  });
});
