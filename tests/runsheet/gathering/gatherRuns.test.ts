// Runs of several kinds gathered in the headless workbook, and what becomes of the gathered sheet when they change.
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { placeOf } from "../../../src/runsheet/expressions/formulaText";
import { gatherRuns, type Gathered } from "../../../src/runsheet/gathering/gatherRuns";
import { checkOptions } from "../../../src/runsheet/options/checkOptions";
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { runSheet } from "../../../src/runsheet/sheet/RunSheet";
import { shareAsValues } from "../../../src/sharing/shareAsValues";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";
import { charring, filled, kiln, prunings, rowsShown, weighed } from "./gatherable";

jest.setTimeout(60_000);

let open: HeadlessWorkbook;
// One workbook for all, because run sheets take a while to calculate; each check puts back what it changes, or comes last.
beforeAll(async () => (open = await openHeadlessWorkbook()));
afterAll(() => open.close());

const sheetNamed = (name: string) => {
  const sheet = open.engine.book.getSheetByName(name);
  if (sheet === null) throw new Error(`no sheet ${name}`);
  return sheet;
};

describe("gatherRuns(workbook) without a run", () => {
  it("says that there is none", async () => {
    await open.workbook.addSheet({ name: "Own", cells: [{ cell: "A1", content: "RESULTS" }], columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" }); // prettier-ignore
    await expect(gatherRuns(open.workbook)).rejects.toThrow("No run sheet is in this workbook yet. Insert one above, weigh a run, then gather.");
    expect(await open.workbook.sheetNames()).not.toContain("Gathered runs");
  });

  it("says why none of those that are there can be gathered", async () => {
    const plan = buildRunSheet(charring);
    const name = await open.workbook.addSheet({ ...plan, cells: plan.cells.filter(({ content }) => content !== "RESULTS (shares)") });
    await expect(gatherRuns(open.workbook)).rejects.toThrow('No run sheet can be gathered: "Charring run", no table of shares was found on it.');
    open.engine.book.deleteSheet(sheetNamed(name));
  });

  it("leaves out a sheet with an exclamation mark in its name, which a formula cannot name here, and says so", async () => {
    const name = await open.workbook.addSheet(buildRunSheet(charring));
    sheetNamed(name).setName("oak!");
    await expect(gatherRuns(open.workbook)).rejects.toThrow(
      'No run sheet can be gathered: "oak!", its name holds "!", which not every spreadsheet reads in a formula: rename the sheet, then gather again.',
    );
    open.engine.book.deleteSheet(sheetNamed("oak!"));
  });
});

const PLUM: RunSheetOptions = { ...charring, kind: "ashing", replicates: 3, ashFirings: 2 };
const plumCells = runSheet(checkOptions(PLUM));

describe("gatherRuns(workbook)", () => {
  let gathered: Gathered;
  beforeAll(async () => {
    const plum = filled("It's (a) b", PLUM, (sheet) => [
      ...weighed(sheet, [prunings(0.712, 0.03), prunings(0.713, 0.031), prunings(0.714, 0.032)]),
      [sheet.setup.material, "plum"],
      [sheet.setup.name(2), "Asha"],
    ]);
    const dried = filled("Drying run", { ...charring, kind: "drying" }, (sheet) => weighed(sheet, [{ vessel: 25, moist: 65, dry: 45 }]));
    for (const plan of [kiln("Kiln 1", 0.71), kiln("Kiln 2", 0.72), plum, dried]) await open.workbook.addSheet(plan);
    gathered = await gatherRuns(open.workbook);
  });

  /** The plum run's weighings after each firing, all typed anew. */
  const fire = async (phase: "charring" | "ashing", grams: number): Promise<void> => {
    const table = plumCells[phase];
    if (table === undefined) throw new Error(`no ${phase}`);
    for (const firing of [0, 1]) await open.type("It's (a) b", placeOf(table.box(table.rows.first + firing, 1)), grams);
  };

  it("makes one row a sample of every kind of run, by references", async () => {
    expect(gathered).toEqual({ sheet: "Gathered runs", samples: 6, runs: 4, leftOut: [] });
    const row = await rowsShown(open, gathered.sheet);
    expect(Array.from({ length: 12 }, (_, index) => row(index + 7)).slice(0, 8)).toEqual([
      ["Kiln 1", "✓", "sample 1", "50.00%", "71.00%", "29.00%", "", "0.060%", "counted"],
      ["Kiln 2", "✓", "sample 1", "50.00%", "72.00%", "28.00%", "", "0.060%", "counted"],
      ["It's (a) b", "✓", "plum 1", "50.00%", "71.20%", "28.80%", "3.00%", "0.060%", "counted"],
      ["It's (a) b", "✓", "Asha", "50.00%", "71.30%", "28.70%", "3.10%", "0.060%", "counted"],
      ["It's (a) b", "✓", "plum 3", "50.00%", "71.40%", "28.60%", "3.20%", "0.060%", "counted"],
      ["Drying run", "✓", "sample 1", "50.00%", "", "", "", "0.025%", "water only: no vapour share"],
      ["Median", "", "", "50.00%", "71.30%", "28.70%", "3.10%", "", ""],
      ["Scatter, 1.4826 MAD", "", "", "alike", "0.15%", "0.15%", "0.15%", "", ""],
    ]);
    // Median of 71.0, 71.2, 71.3, 71.4 and 72.0; distances 0.3, 0.1, 0, 0.1 and 0.7: 1.4826 * 0.1
    expect(row(2)[0]).toBe("Median 71.30 % of the dry sample left as vapour; scatter 0.15 % (1.4826 MAD); 5 samples counted.");
    const formulas = (await open.workbook.readUsed(gathered.sheet)).rows.flat().flatMap(({ formula }) => (formula === "" ? [] : [formula]));
    expect(formulas.filter((formula) => formula.includes("'It''s (a) b'!$C$"))).not.toEqual([]);
  });

  it("follows a weighing corrected afterwards, a name and a material typed afterwards", async () => {
    await fire("charring", 45.03 - 20 * 0.71);
    await open.type("It's (a) b", placeOf(plumCells.setup.name(3)), "Ben");
    const row = await rowsShown(open, gathered.sheet);
    expect(row(9).slice(2, 6)).toEqual(["plum 1", "50.00%", "71.00%", "29.00%"]);
    expect(row(11)[2]).toBe("Ben");
    // 71.0, 71.0, 71.3, 71.4 and 72.0: 1.4826 * 0.3
    expect(row(2)[0]).toMatch(/^Median 71\.30 % .* scatter 0\.44 %/);
    await fire("charring", 45.03 - 20 * 0.712);
  });

  it("withholds what its run withholds, and counts it no more", async () => {
    // Ash above char.
    await fire("ashing", 32);
    const row = await rowsShown(open, gathered.sheet);
    expect(row(9).slice(1)).toEqual(["▲ check 6", "plum 1", "withheld", "withheld", "withheld", "withheld", "", "▲ withheld: not counted"]);
    // The others of the sheet have numbers, and its mark against them.
    expect(row(10)[8]).toBe("? in doubt: not counted");
    expect(row(2)[0]).toBe("Vapour shares counted: 2. Too few for a median and a scatter: three are needed.");
    await fire("ashing", 25 + 20 * 0.03);
  });

  it("makes a new sheet each time, numbered, and gathers no gathered sheet", async () => {
    await open.type(gathered.sheet, "B4", 70);
    const second = await gatherRuns(open.workbook);
    expect(second).toEqual({ ...gathered, sheet: "Gathered runs (2)" });
    expect((await rowsShown(open, gathered.sheet))(4)[1]).toBe("70.0");
    expect((await rowsShown(open, second.sheet))(4)[1]).toBe("");
  });

  it("leaves a copy with values out and says why", async () => {
    const { copy } = await shareAsValues(open.workbook, "Kiln 1", "2027-01-15");
    const made = await gatherRuns(open.workbook);
    expect(made.leftOut).toEqual([{ sheet: copy, why: "a copy with values: it follows no correction" }]);
    const row = await rowsShown(open, made.sheet);
    expect([row(15)[0], row(16)]).toEqual(["LEFT OUT", [copy, "a copy with values: it follows no correction", "", "", "", "", "", "", ""]]);
    open.engine.book.deleteSheet(sheetNamed(copy));
  });

  it("leaves a run sheet out whose results are not found, and says why", async () => {
    const { rows } = await open.workbook.readUsed("Kiln 1");
    const heading = rows.flat().find(({ value }) => value === "RESULTS (shares)")?.cell ?? "";
    await open.type("Kiln 1", heading, "My results");
    expect(await gatherRuns(open.workbook)).toMatchObject({ samples: 5, leftOut: [{ sheet: "Kiln 1", why: "no table of shares was found on it" }] });
    await open.type("Kiln 1", heading, "RESULTS (shares)");
  });

  it("follows a renamed sheet, rows put in above, and says that a deleted one is gone while the others stand", async () => {
    sheetNamed("It's (a) b").setName("Plum's (2)");
    const results = runSheet(checkOptions(charring)).rows.results.heading;
    sheetNamed("Kiln 2").insertRows(results - 1, 2);
    open.engine.book.deleteSheet(sheetNamed("Kiln 1"));
    const row = await rowsShown(open, gathered.sheet);
    expect(row(7)).toEqual(["Kiln 1", "", "", "", "", "", "", "", '▲ gone, or its name holds "!"']);
    expect(row(8).slice(0, 5)).toEqual(["Kiln 2", "✓", "sample 1", "50.00%", "72.00%"]);
    expect(row(10).slice(2, 5)).toEqual(["Asha", "50.00%", "71.30%"]);
    expect(row(3)[0]).toMatch(/Not counted: 2 of 6 rows\.$/);
  });
});
