import { burning } from "../../../src/functions/burning";
import type { CellFunction } from "../../../src/functions/cellFunction";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";

let open: HeadlessWorkbook;
beforeAll(async () => {
  open = await openHeadlessWorkbook();
  const cells = {
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
  for (const [cell, content] of Object.entries(cells)) await open.type(FIRST_SHEET, cell, content);
});
afterAll(() => open.close());

const named = (name: string): CellFunction => burning.find((definition) => definition.name === name) as CellFunction;

/** M10 and the cell below, in twelve figures: the grid rounds its subtractions a little differently. */
async function shownBy(formula: string): Promise<(number | null)[]> {
  await open.type(FIRST_SHEET, "M10", formula);
  await open.settled();
  const read = await open.workbook.read(FIRST_SHEET, "M10:M11");
  return read.rows.map((row) => (row[0]?.value === null ? null : Number(Number(row[0]?.value).toPrecision(12))));
}

// Another program's arithmetic on built-in functions alone, as a colleague without the add-in would have it.
test.each([
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
])("%s of %j shows the same in plain cells", async (name, given) => {
  const definition = named(name);
  const text = Object.fromEntries(Object.keys(definition.inputs).map((input, index) => [input, given[index] ?? ""]));
  const ours = await shownBy(`=RETORT.${name}(${given.join(", ")})`);
  const plain = await shownBy(`=${definition.inCells?.(text)}`);
  expect(ours[0]).not.toBeNull();
  expect(ours[0]).not.toBeNaN();
  expect(plain).toEqual(ours);
});
