import { drying } from "../../../src/functions/drying";
import { residue } from "../../../src/functions/residue";
import { FIRST_SHEET } from "../../workbench/headlessWorkbook";
import { plainCellsSheet, type Call, type PlainCellsSheet } from "./plainCellsSheet";

const given = { A1: 25, B1: 35, C1: 31.5, D1: 27.5, E1: 25.2, A2: "tared", B2: 10, C2: 6.5, D2: 2.5, A3: 0.35, B3: "Wet", C3: "dry", D3: 1.7 };

const calls: readonly Call[] = [
  ["MOISTURE.WET", ["A1", "B1", "C1"]],
  ["MOISTURE.WET", ["A2", "B2", "C2"]],
  ["MOISTURE.WET", ["A1:A2", "B1:B2", "C1:C2"]],
  ["MOISTURE.WET", ["25", "B1+0.5", "C1-0.5"]],
  ["MOISTURE.DRY", ["A1", "B1", "C1"]],
  ["MOISTURE.DRY", ["A1:A2", "B1:B2", "C1:C2"]],
  ["MOISTURE.DRY", ['"tared"', "B2", "C2"]],
  ["MOISTURE.CONVERT", ["A3", "B3", "C3"]],
  ["MOISTURE.CONVERT", ["D3", "C3", "B3"]],
  ["MOISTURE.CONVERT", ["A3", '"wet"', '" WET "']],
  ["VOLATILEFRACTION", ["A1", "B1", "D1"]],
  ["VOLATILEFRACTION", ["A2", "B2", "D2"]],
  ["CHARYIELD", ["A1", "B1", "D1"]],
  ["CHARYIELD", ["A1", "B1", "D1", "E1"]],
  ["CHARYIELD", ["A1:A2", "B1:B2", "D1:D2", "E1:E2"]],
];

const functions = [...drying, ...residue];
// The grid rounds its subtractions a little differently.
const FIGURES = 12;

let sheet: PlainCellsSheet;
beforeAll(async () => {
  sheet = await plainCellsSheet(functions, given, calls);
});
afterAll(() => sheet.open.close());

// Another program's arithmetic on built-in functions alone, as a colleague without the add-in would have it.
test.each(calls.map(([name, texts], index) => [name, texts.join(", "), index] as const))("%s(%s) shows the same in plain cells", async (...call) => {
  const ours = await sheet.ours(call[2], FIGURES);
  expect(ours[0]).toBeGreaterThan(0);
  expect(await sheet.plain(call[2], FIGURES)).toEqual(ours);
});

test("CONSTANTWEIGHT refuses a vessel cell that is still blank", async () => {
  await sheet.open.type(FIRST_SHEET, "L1", "=RETORT.CONSTANTWEIGHT(B1:C1,,,,G1)");
  await sheet.open.settled();
  expect((await sheet.open.workbook.read(FIRST_SHEET, "L1")).rows[0]?.[0]?.message).toBe(
    'vessel: nothing here (blank or 0). Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  );
});
