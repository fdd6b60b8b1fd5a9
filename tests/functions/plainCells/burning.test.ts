import { burning } from "../../../src/functions/burning";
import { plainCellsSheet, type Call, type PlainCellsSheet } from "./plainCellsSheet";

const given = {
  A1: 0.4877,
  B1: 0.0613,
  C1: 0.4069,
  D1: 0.0005,
  E1: 0.001,
  F1: 0.002,
  A2: 0.0781,
  B2: 0.001,
  C2: 0,
  D2: 0,
  E2: 0,
  F2: 0.9,
  G1: 1.184,
  G2: 3.5,
  H1: 0.232,
};

const calls: readonly Call[] = [
  ["OXYGENDEMAND.ULTIMATE", ["A1", "B1", "C1"]],
  ["OXYGENDEMAND.ULTIMATE", ["A1", "B1", "C1", "D1", "E1", "F1"]],
  ["OXYGENDEMAND.ULTIMATE", ["A1", "B1", "C1", "", "", "J1"]],
  ["OXYGENDEMAND.ULTIMATE", ["A2", "B2", "C2", "D2", "E2", "F2"]],
  ["OXYGENDEMAND.ULTIMATE", ["A1:A2", "B1:B2", "C1:C2", "D1:D2", "E1:E2", "F1:F2"]],
  ["OXYGENDEMAND.ULTIMATE", ["A1-0.1", "B1+0.01", "C1-0.1"]],
  ["AIRDEMAND", ["G1"]],
  ["AIRDEMAND", ["G1", "H1"]],
  ["AIRDEMAND", ["G1", "J1"]],
  ["AIRDEMAND", ["G1:G2", "H1:H2"]],
  ["AIRDEMAND", ["G1*2", "0.23"]],
  ["AIRDEMAND", ["G1", "0"]],
];

// The grid rounds its subtractions a little differently.
const FIGURES = 12;

let sheet: PlainCellsSheet;
beforeAll(async () => {
  sheet = await plainCellsSheet(burning, given, calls);
});
afterAll(() => sheet.open.close());

// Another program's arithmetic on built-in functions alone, as a colleague without the add-in would have it.
test.each(calls.map(([name, texts], index) => [name, texts.join(", "), index] as const))("%s(%s) shows the same in plain cells", async (...call) => {
  const ours = await sheet.ours(call[2], FIGURES);
  expect(ours[0]).toEqual(expect.any(Number));
  expect(await sheet.plain(call[2], FIGURES)).toEqual(ours);
});
