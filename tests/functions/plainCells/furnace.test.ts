import { energy } from "../../../src/functions/energy";
import { furnace } from "../../../src/functions/furnace";
import { pottery } from "../../../src/functions/pottery";
import { reporting } from "../../../src/functions/reporting";
import { inPlainCells, plainCellsSheet, type Call, type PlainCellsSheet } from "./plainCellsSheet";

const functions = [...furnace, ...energy, ...reporting, ...pottery];

const given = {
  ...{ A1: 7.5, B1: 35.1, C1: 500, D1: 90_000, E1: 5, F1: 0.553 },
  ...{ A2: 1, B2: 18.015, C2: 0, D2: 0, E2: 30, F2: 1 },
  ...{ A3: 225, B3: 13, C3: 20, D3: 5, E3: "volume", F3: "length" },
  ...{ A4: 6, B4: 4, C4: 20, D4: 105, E4: 1.4, F4: 50, G4: 0.49 },
  ...{ A5: 12, B5: 3, C5: 15, D5: 60, E5: 0, F5: 0, G5: 0 },
  ...{ A6: 100, B6: 88, C6: 120, D6: 294, E6: 2500, F6: "tared" },
  ...{ A7: 50, B7: 47, C7: 122, D7: 174, E7: 0 },
};

const calls: readonly Call[] = [
  ["GASVOLUME", ["A1", "B1", "C1"]],
  ["GASVOLUME", ["A1:A2", "B1:B2", "C1:C2", "D1:D2"]],
  ["GASVOLUME", ["A1+A2", "B1", "C1-10", "H1"]],
  ["GASVOLUME", ["1", "18.015", "100", "101325"]],
  ["AIRLEFT", ["E1"]],
  ["AIRLEFT", ["E1:E2"]],
  ["AIRLEFT", ["A1/F1-10"]],
  ["VENTDIAMETER", ["A1", "E1", "F1", "B5"]],
  ["VENTDIAMETER", ["A1:A2", "E1:E2", "F1:F2", "B5", "A5"]],
  ["VENTDIAMETER", ["13.56", "E1", "F1", "4", "H1"]],
  ["SEVERITY", ["A3", "B3"]],
  ["SEVERITY", ["A3", "B3", "C3", "D3"]],
  ["SEVERITY", ["A3", "H1", "C3", "D3"]],
  ["SEVERITY", ["A3", "B3", "H1", "H2"]],
  ["SEVERITY", ["A3+20", '""', "C3", "D3/2"]],
  ["BOILINGPOINT.WATER", ["D1"]],
  ["BOILINGPOINT.WATER", ["D1+11325"]],
  ["DRYINGHEAT", ["A4", "B4", "C4", "D4"]],
  ["DRYINGHEAT", ["A4:A5", "B4:B5", "C4:C5", "D4:D5", "E4:E5"]],
  ["DRYINGHEAT", ["A4", "B4", "C4", "D4", "H1", "F4", "G4"]],
  ["DRYINGHEAT", ["A5", "B5", "C5", "D5", "1.2", "F5", "G5"]],
  ["DRYINGHEAT", ["A5", "B5+1", "C5-5", "D5", "E5"]],
  ["SHRINKAGE", ["A6:A7", "B6:B7"]],
  ["SHRINKAGE", ["A6", "B6", "E3"]],
  ["SHRINKAGE", ["A6", "B6", "F3"]],
  ["SHRINKAGE", ["100", "88", '"Volume"']],
  ["ABSORPTION", ["A6", "C6"]],
  ["ABSORPTION", ["A6", "C6", "E7"]],
  ["ABSORPTION", ["C6", "C7", "A7"]],
  ["SLIP.SOLIDS", ["C6", "D6", "A6"]],
  ["SLIP.SOLIDS", ["F6", "D7", "A6", "E6"]],
  ["SLIP.SOLIDS", ['"tared"', "D7", "100", "E7"]],
  ["SLIP.SOLIDS", ["C6:C7", "D6:D6", "A6", "2500"]],
];

// Another program's powers and roots may differ in the last place or two.
const FIGURES = 12;

let sheet: PlainCellsSheet;
beforeAll(async () => {
  sheet = await plainCellsSheet(functions, given, calls);
});
afterAll(() => sheet.open.close());

test.each(calls.map(([name, texts], index) => [name, texts.join(", "), index] as const))("%s(%s) shows the same in plain cells", async (...call) => {
  const ours = await sheet.ours(call[2], FIGURES);
  expect(ours[0]).toBeGreaterThan(0);
  expect(await sheet.plain(call[2], FIGURES)).toEqual(ours);
});

test("every function of the four families that can be rewritten is rewritten here", () => {
  const rewritable = functions.filter(({ inCells }) => inCells !== undefined).map(({ name }) => name);
  expect([...new Set(calls.map(([name]) => name)), "REPORTED"].sort()).toEqual([...rewritable].sort());
});

test.each([["0.34802,0.00131"], ["34812,1262,2"], ["0.345,0.0996"], ["-0.004,0.2"]])("REPORTED(%s) prints the same in plain cells", async (texts) => {
  const plain = inPlainCells(functions, ["REPORTED", texts.split(",")]);
  await sheet.open.type("Sheet1", "Z90", plain);
  await sheet.open.type("Sheet1", "Z91", `=RETORT.REPORTED(${texts})`);
  await sheet.open.settled();
  const [shown, ours] = (await sheet.open.workbook.read("Sheet1", "Z90:Z91")).rows.map(([cell]) => cell?.value);
  expect(shown).toBe(ours);
  expect(ours).toContain("±");
});

// A cell formula may hold 8192 characters (the host's published limit).
test("the longest rewritten formula, BOILINGPOINT.WATER of a long reference, fits into a cell", () => {
  expect(inPlainCells(functions, ["BOILINGPOINT.WATER", ["'A sheet with a rather long name'!$AB$1000"]]).length).toBeLessThan(8192);
});
