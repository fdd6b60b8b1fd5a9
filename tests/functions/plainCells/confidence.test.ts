import { confidence } from "../../../src/functions/confidence";
import { FIRST_SHEET } from "../../workbench/headlessWorkbook";
import { plainCellsSheet, type Call, type PlainCellsSheet } from "./plainCellsSheet";

const given = {
  A1: 25,
  B1: 35,
  C1: 32,
  D1: 0.01,
  A2: "tared",
  B2: 10,
  C2: 7,
  D2: 0.002,
  E1: 0.005,
  F1: 0.3,
  G1: 3,
  H1: 34.99,
  H2: 10.5,
  J2: 0,
  I1: true,
};

const calls: readonly Call[] = [
  ["READING.U", ["D1"]],
  ["READING.U", ["D1", "D2", "E1", "I1"]],
  ["READING.U", ["D1", "0.002", "", "TRUE"]],
  ["READING.U", ["D1:D2", "E1"]],
  ["READING.U", ["D1+0.001", "D2*2"]],
  ["READING.U", ["D1", "J1", "J2", "J1"]],
  ["READING.U", ["D1", "J2", "0", "J2"]],
  ["SAMPLE.MINIMUM", ["D1", "E1", "J2", "J1"]],
  ["CHANGE.SIGNIFICANT", ["B1", "C1", "D1", "J2"]],
  ["LOSSFRACTION.U", ["A1", "B1", "C1", "D1"]],
  ["LOSSFRACTION.U", ["A2", "B2", "C2", "D2"]],
  ["LOSSFRACTION.U", ["A1:A2", "B1:B2", "C1:C2", "D1:D2"]],
  ["LOSSFRACTION.U", ['"tared"', "B2", "C2", "D2"]],
  ["LOSSFRACTION.U", ["25", "B1-1", "C1-1", "D1/2"]],
  ["SAMPLE.MINIMUM", ["D1", "E1"]],
  ["SAMPLE.MINIMUM", ["D1", "E1", "F1", "G1"]],
  ["SAMPLE.MINIMUM", ["D1:D2", "E1", "J1"]],
  ["CHANGE.SIGNIFICANT", ["B1", "C1", "D1"]],
  ["CHANGE.SIGNIFICANT", ["B1:B2", "H1:H2", "D1:D2", "G1"]],
  ["CHANGE.SIGNIFICANT", ["B1", "C1-B1+H1", "D1", "", "0.001"]],
  ["CHANGE.SIGNIFICANT", ["35", "34.97", "D1", "", "D2"]],
  ["CHANGE.SIGNIFICANT", ["35", "34.97", "D1", "2", "D1"]],
  ["CHANGE.SIGNIFICANT", ["35", "34.96", "D1", "2", "D1"]],
  ["CHANGE.SIGNIFICANT", ["35", "34.98", "0.0041", "", "D1"]],
  ["CHANGE.SIGNIFICANT", ["35", "34.97", "0.0041", "", "D1"]],
  ["CHANGE.SIGNIFICANT", ["B1:B2", "H1:H2", "D1:D2", "G1", "D2"]],
];

// The grid rounds its subtractions a little differently.
const FIGURES = 12;

let sheet: PlainCellsSheet;
beforeAll(async () => {
  sheet = await plainCellsSheet(confidence, given, calls);
});
afterAll(() => sheet.open.close());

// Another program's arithmetic on built-in functions alone, as a colleague without the add-in would have it.
test.each(calls.map(([name, texts], index) => [name, texts.join(", "), index] as const))("%s(%s) shows the same in plain cells", async (...call) => {
  const ours = await sheet.ours(call[2], FIGURES);
  expect(["number", "string"]).toContain(typeof ours[0]);
  expect(ours[0]).not.toBe("");
  expect(ours[0]).not.toBe("#VALUE!");
  expect(await sheet.plain(call[2], FIGURES)).toEqual(ours);
});

test("REPLICATES over cells of which some are still empty asks what they are, and spills once told", async () => {
  for (const [index, value] of [10.1, 10.3, 10.2].entries()) await sheet.open.type(FIRST_SHEET, `P${index + 1}`, value);
  await sheet.open.type(FIRST_SHEET, "R1", "=RETORT.REPLICATES(P1:P5)");
  await sheet.open.type(FIRST_SHEET, "R3", '=RETORT.REPLICATES(P1:P5, , "skip")');
  await sheet.open.settled();
  const { rows } = await sheet.open.workbook.read(FIRST_SHEET, "R1:S12");
  expect(rows[0]?.[0]?.message).toBe(
    'values: row 4 is 0 or an empty cell, which look alike here. Give "count" as zeros if 0 was found, "skip" if the cell is empty.',
  );
  expect(rows[3]?.map((cell) => cell?.value)).toEqual(["Results, n", 3]);
  expect(rows[4]?.[1]?.value).toBeCloseTo(10.2, 12);
});
