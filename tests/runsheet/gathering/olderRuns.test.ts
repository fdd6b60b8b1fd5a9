// Sheets as version 0.2 made them, in the parts that are gathered; shares and checks are typed in place of their long formulas.
import { gatherRuns } from "../../../src/runsheet/gathering/gatherRuns";
import { readRuns } from "../../../src/runsheet/gathering/readRuns";
import type { PlannedCell, SheetPlan } from "../../../src/workbook/SheetPlan";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";
import { rowsShown } from "./gatherable";

/** Cells from a table: a text that begins with "=" is a formula. */
const cellsOf = (table: Readonly<Record<string, string | number>>): PlannedCell[] =>
  Object.entries(table).map(([cell, held]) => (typeof held === "string" && held.startsWith("=") ? { cell, formula: held } : { cell, content: held }));

const sheet = (name: string, table: Readonly<Record<string, string | number>>): SheetPlan => ({
  name,
  cells: cellsOf(table),
  columnWidths: [],
  entryRules: [],
  frozenRows: 0,
  startAt: "A1",
});

const OLD = {
  ...{ A1: "Run sheet: drying, charring and ashing", A8: "Sample", B8: "hazel" },
  ...{ A31: "Results, each with its ± standard uncertainty (k = 1)", A32: "Share or count", B32: "Sample 1", C32: "Sample 2", D32: "Mean" },
  ...{ J31: "Working: for results and checks", J32: "Working, sample 1", K32: "Working, sample 2" },
  ...{ A34: "Moisture, wet basis", B34: "=1-0.5", C34: "=1-0.49", J34: "=0.0001", K34: "=0.0001" },
  ...{ A38: "Volatile fraction of dry sample", B38: "=1-0.29", C38: "=1-0.28", J38: "=0.0003", K38: "=0.0004" },
  ...{ A40: "Char yield of dry sample", B40: "=0.29", C40: "=0.28", A44: "Ash of dry sample", B44: "=0.03", C44: '="check the ash weighing"' },
  ...{ A47: "Checks", A48: "Vessel and sample", B48: "in order", A49: "Order of weights", B49: '=""', A50: "Steady", B50: "in order" },
  ...{ A52: "Replicates and their agreement", B53: "not looked at" },
} as const;

let open: HeadlessWorkbook;
beforeAll(async () => (open = await openHeadlessWorkbook()));
afterAll(() => open.close());

test("a sheet of version 0.2 has its rows, ± doubled to 95 %, trusted while its checks are in order or silent", async () => {
  await open.workbook.addSheet(sheet("Old", OLD));
  await open.workbook.addSheet(sheet("Old drying", { ...OLD, A38: "", A40: "", A44: "", B8: "" }));
  const { sheet: made, ...gathered } = await gatherRuns(open.workbook);
  expect(gathered).toEqual({ samples: 4, runs: 2, leftOut: [] });
  const row = await rowsShown(open, made);
  expect([7, 8, 9, 10].map(row)).toEqual([
    ["Old", "✓", "hazel 1", "50.00%", "71.00%", "29.00%", "3.00%", "0.060%", "counted"],
    ["Old", "✓", "hazel 2", "51.00%", "72.00%", "28.00%", "check the ash weighing", "0.080%", "counted"],
    ["Old drying", "✓", "sample 1", "50.00%", "", "", "", "0.020%", "water only: no vapour share"],
    ["Old drying", "✓", "sample 2", "51.00%", "", "", "", "0.020%", "water only: no vapour share"],
  ]);
  await open.type("Old", "B50", "not shown steady yet");
  expect((await rowsShown(open, made))(7).slice(1, 9)).toEqual([
    "? its checks",
    ...["hazel 1", "50.00%", "71.00%", "29.00%", "3.00%", "0.060%", "? in doubt: not counted"],
  ]);
});

test("one without its checks or its shares is left out, and says why", async () => {
  const name = await open.workbook.addSheet(sheet("No checks", { ...OLD, A47: "Looked at" }));
  expect(readRuns([await open.workbook.readUsed(name)])).toEqual({
    rows: [],
    leftOut: [{ sheet: "No checks", why: "no table of shares was found on it" }],
  });
});
