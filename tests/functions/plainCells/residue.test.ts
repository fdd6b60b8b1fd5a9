import { balance } from "../../../src/functions/balance";
import { residue } from "../../../src/functions/residue";
import { FIRST_SHEET } from "../../workbench/headlessWorkbook";
import { inPlainCells, plainCellsSheet, type Call, type PlainCellsSheet } from "./plainCellsSheet";

const given = {
  ...{ A1: 25, B1: 35, C1: 28, D1: 0.08, E1: "dry", F1: 25.3 },
  ...{ A2: "tared", B2: 10, C2: 3, D2: 0.05, E2: "as analysed", F2: 0.3 },
  ...{ A3: "As received", B3: "ash-free", C3: 0.05, D3: 0.1, E3: "hydrogen", F3: "none" },
  ...{ A4: 31.5, B4: 0.002, C4: 0.006, D4: 10, E4: 12, F4: 15 },
  ...{ A5: 20, B5: 101_325, C5: 0.5, D5: "OIML", E5: 23, F5: 95_000 },
  ...{ A7: 0.4, B7: 0.402, C7: 0.405 },
  ...{ B9: 0, C8: 1.16, C9: 0, D8: 8400 },
  ...{ A6: 2, B6: 2700, C6: 1.16, D6: 8400, E6: 30, F6: 0.00005 },
};

const calls: readonly Call[] = [
  ["VOLATILEMATTER", ["A1", "B1", "C1", "D1"]],
  ["VOLATILEMATTER", ["A1:A2", "B1:B2", "C1:C2", "D1:D2", "E1:E2"]],
  ["VOLATILEMATTER", ['"tared"', "B2", "C2", "0.05", '"dry"']],
  ["ASHFRACTION", ["A1", "B1", "F1"]],
  ["ASHFRACTION", ["A1:A2", "B1:B2", "F1:F2", "D1:D2"]],
  ["ASHFRACTION", ["A1", "B1", "F1", "G1"]],
  ["FIXEDCARBON", ["D1", "0.7", "C3"]],
  ["FIXEDCARBON", ["D1:D2", "F2", "F3"]],
  ["FIXEDCARBON", ["0", "F2+0.1", '"none"']],
  ["LOSSONIGNITION", ["A1:A2", "B1:B2", "C1:C2"]],
  ["BASIS.CONVERT", ["F2", '"as received"', '"dry"', "D3"]],
  ["BASIS.CONVERT", ["F2", "A3", "E1", "D3"]],
  ["BASIS.CONVERT", ["F2", '"dry"', "B3", "", "", "C3"]],
  ["BASIS.CONVERT", ["F2", "B3", "A3", "D3", "", "F3"]],
  ["BASIS.CONVERT", ["F2", "E1:E2", "B3", "", "D1", "C3"]],
  ["BASIS.CONVERT", ["D2", '"as analysed"', '"dry"', "", "D1", "", '"hydrogen"']],
  ["BASIS.CONVERT", ["D2", "E2", "A3", "D3", "D1", "", "E3"]],
  ["BASIS.CONVERT", ["F2", "A3", '"ash-free"', "D3", "", "C3", '" OXYGEN "']],
  ["ZERODRIFT", ["A4", "B4", "C4"]],
  ["ZERODRIFT", ["A4", "B4", "C4", "D4", "E4", "F4"]],
  ["ZERODRIFT", ["A4", "B4", "C4", "0", "2", "5"]],
  // Clock times, fractions of a day.
  ["ZERODRIFT", ["A4", "B4", "C4", "A7", "B7", "C7"]],
  ["ZERODRIFT", ["A4", "B4", "C4", "G1", "G2", "G3"]],
  ["BLANKCORRECTED", ["F1", "B4"]],
  ["BLANKCORRECTED", ["0.85", "-0.004"]],
  ["AIRDENSITY", ["A5", "B5", "C5"]],
  ["AIRDENSITY", ["E5", "F5", "C5-0.1", '"CIPM-2007"']],
  ["AIRDENSITY", ["A5", "B5", "C5", "D5"]],
  ["AIRDENSITY", ["28", "B5", "C5", '"OIML"']],
  ["BUOYANCY", ["A6", "B6"]],
  ["BUOYANCY", ["A6:A6", "B6:B6", "C6", "D6"]],
  ["BUOYANCY", ["2.32", "920", "C6+0.04"]],
  // A blank cell, a 0, and ranges of a value beside them, where they are the same as left out.
  ["BUOYANCY", ["2.32", "920", "A9", "B9"]],
  ["BUOYANCY", ["2.32", "920", "0", "B9-0"]],
  ["BUOYANCY", ["A6", "B6", "C8:C9", "D8:D9"]],
  ["HOTWEIGHING", ["E6", "A9"]],
  ["HOTWEIGHING", ["E6", "B9"]],
  ["BLANKCORRECTED", ["-0.03", "-0.05"]],
  ["HOTWEIGHING", ["E6"]],
  ["HOTWEIGHING", ["E6", "F6"]],
];

const functions = [...residue, ...balance];
// The grid rounds its subtractions a little differently.
const FIGURES = 11;

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

// Plain cells cannot give the message, but no number may stand where the function refuses.
test.each([
  ["FIXEDCARBON", ["D1", "0.7", "G1"]],
  ["BASIS.CONVERT", ["F2", "A3", "E1", "G1"]],
  ["BASIS.CONVERT", ["F2", "A3", "E1"]],
  ["BASIS.CONVERT", ["F2", "E1", "B3", "", "", "G1"]],
] as const)("%s(%j) with a blank cell shows an error in plain cells too", async (name, texts) => {
  const { open } = sheet;
  await open.type(FIRST_SHEET, "L1", `=RETORT.${name}(${texts.join(", ")})`);
  await open.type(FIRST_SHEET, "M1", inPlainCells(functions, [name, texts]));
  await open.settled();
  const [row] = (await open.workbook.read(FIRST_SHEET, "L1:M1")).rows;
  expect(row?.map((cell) => cell.value)).toEqual(["#VALUE!", "#N/A"]);
});

test("every function of the two families that can be rewritten is rewritten here", () => {
  const rewritable = functions.filter(({ inCells }) => inCells !== undefined).map(({ name }) => name);
  const elsewhere = ["VOLATILEFRACTION", "CHARYIELD"];
  expect([...new Set([...calls.map(([name]) => name), ...elsewhere])].sort()).toEqual([...rewritable].sort());
});

// A cell formula may hold 8192 characters (the host's published limit).
test("the longest rewritten formula, AIRDENSITY of three long references and a formula cell, fits into a cell", () => {
  const reference = "'A sheet with a rather long name'!$AB$1000";
  expect(inPlainCells(functions, ["AIRDENSITY", [reference, reference, reference, reference]]).length).toBeLessThan(8192);
});
