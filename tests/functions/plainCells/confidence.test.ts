import type { CellFunction } from "../../../src/functions/cellFunction";
import { confidence } from "../../../src/functions/confidence";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";

const cells = { A1: 25, B1: 35, C1: 32, D1: 0.01, A2: "tared", B2: 10, C2: 7, D2: 0.002, E1: 0.005, F1: 0.3, G1: 3, H1: 34.99, H2: 10.5, J2: 0 };

let open: HeadlessWorkbook;
beforeAll(async () => {
  open = await openHeadlessWorkbook();
  for (const [cell, content] of Object.entries(cells)) await open.type(FIRST_SHEET, cell, content);
  await open.type(FIRST_SHEET, "I1", true);
});
afterAll(() => open.close());

/** M10 and the cell below, numbers in twelve figures: the grid rounds its subtractions a little differently. */
async function shownBy(formula: string): Promise<unknown[]> {
  await open.type(FIRST_SHEET, "M10", formula);
  await open.settled();
  const { rows } = await open.workbook.read(FIRST_SHEET, "M10:M11");
  return rows.map(([cell]) => (typeof cell?.value === "number" ? Number(cell.value.toPrecision(12)) : cell?.value));
}

// Another program's arithmetic on built-in functions alone, as a colleague without the add-in would have it.
test.each([
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
])("%s of %j shows the same in plain cells", async (name, given) => {
  const definition = confidence.find((candidate) => candidate.name === name) as CellFunction;
  const text = Object.fromEntries(Object.keys(definition.inputs).map((input, index) => [input, given[index] ?? ""]));
  const ours = await shownBy(`=RETORT.${name}(${given.join(", ")})`);
  const plain = await shownBy(`=${definition.inCells?.(text)}`);
  expect(["number", "string"]).toContain(typeof ours[0]);
  expect(ours[0]).not.toBe("");
  expect(ours[0]).not.toBe("#VALUE!");
  expect(plain).toEqual(ours);
});

test("REPLICATES over cells of which some are still empty asks what they are, and spills once told", async () => {
  for (const [index, value] of [10.1, 10.3, 10.2].entries()) await open.type(FIRST_SHEET, `P${index + 1}`, value);
  await open.type(FIRST_SHEET, "R1", "=RETORT.REPLICATES(P1:P5)");
  await open.type(FIRST_SHEET, "R3", '=RETORT.REPLICATES(P1:P5, , "skip")');
  await open.settled();
  const { rows } = await open.workbook.read(FIRST_SHEET, "R1:S12");
  expect(rows[0]?.[0]?.message).toBe(
    'values: row 4 is 0 or an empty cell, which look alike here. Give "count" as zeros if 0 was found, "skip" if the cell is empty.',
  );
  expect(rows[3]?.map((cell) => cell?.value)).toEqual(["Results, n", 3]);
  expect(rows[4]?.[1]?.value).toBeCloseTo(10.2, 12);
});
