// Columns put in and taken out of a run sheet in the grid, and rows deleted: what the sheet says, and that nothing typed is written over.
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { gatherRuns } from "../../../src/runsheet/gathering/gatherRuns";
import { growRunSheet, mendRunSheet } from "../../../src/runsheet/growing/growRunSheet";
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { typedCells } from "../../../src/workbook/holdsTheSame";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";

jest.setTimeout(240_000);

let open: HeadlessWorkbook;
beforeAll(async () => {
  open = await openHeadlessWorkbook();
});
afterAll(() => open.close());

const three: RunSheetOptions = { kind: "charring", weighIns: 6, intervalMinutes: 20, readability: 0.01, vessel: "tin", replicates: 3 };
const WEIGHTS: Readonly<Record<string, number>> = {
  C11: 31.42, D11: 30.88, E11: 31.07, C12: 84.17, D12: 82.93, E12: 85.55, C13: 74.02, D13: 73.2, E13: 75.11,
  C14: 71.35, D14: 70.45, E14: 72.3, C15: 71.34, D15: 70.44, E15: 72.3, C24: 43.05, D24: 42.21, E24: 42.98,
}; // prettier-ignore
const CLOCKS = { B12: 0.375, B13: 0.39, B14: 0.405, B15: 0.42 };

async function filled(): Promise<string> {
  const name = await open.workbook.addSheet(buildRunSheet(three));
  for (const [cell, grams] of Object.entries({ ...WEIGHTS, ...CLOCKS })) await open.type(name, cell, grams);
  await open.settled();
  return name;
}

const sheet = (name: string) => {
  const found = open.engine.book.getSheetByName(name);
  if (found === null) throw new Error(name);
  return found;
};

/** What stands in the first column or its neighbours beside a row's number, and all that was typed as numbers. */
async function seen(name: string): Promise<{ says: (cell: string) => unknown; typed: readonly number[]; errors: readonly string[] }> {
  await open.settled();
  const reading = await open.workbook.readUsed(name);
  const cells = new Map(reading.rows.flat().map((one) => [one.cell, one]));
  return {
    says: (cell) => cells.get(cell)?.value,
    typed: [...typedCells(reading).values()].filter((one): one is number => typeof one === "number").sort((one, other) => one - other),
    errors: ["A2", "A3", "D1", "E1", "C1"].filter((cell) => (cells.get(cell)?.error ?? "") !== ""),
  };
}

const COLUMN = "▲ A column was put in, moved or taken out. Undo that. To leave a sample out, clear its boxes.";
const ROW = "▲ A row of boxes was deleted. Undo that. To leave a reading out, clear its box.";
const WITHHELD = "▲ Answer withheld: a row or a column of this sheet was moved or taken out, or a column put in. Undo as the next line says.";

test("a column put in is told on the sheet by name, and neither mended over, grown nor gathered; without it the sheet is as before", async () => {
  const name = await filled();
  const before = await seen(name);
  expect(before.says("A3")).not.toBe(COLUMN);
  for (const at of [3, 2, 6, 9, 10, 0]) {
    sheet(name).insertColumnBefore(at);
    const now = await seen(name);
    const first = at === 0 ? "B" : "A";
    expect([at, now.says(`${first}3`), now.says(`${first}2`)]).toEqual([at, COLUMN, WITHHELD]);
    expect(now.errors).toEqual([]);
    await expect(mendRunSheet(open.workbook, name)).rejects.toThrow(/^Nothing was done\. A column, or cells, of this run sheet were put in/);
    for (const growth of ["weighIns", "charFirings", "replicates"] as const)
      await expect(growRunSheet(open.workbook, name, growth)).rejects.toThrow(/^Nothing was done\. A column, or cells/);
    await expect(gatherRuns(open.workbook)).rejects.toThrow(/a column, or cells, were put in/);
    expect((await seen(name)).typed).toEqual(before.typed);
    sheet(name).deleteColumn(at);
    const again = await seen(name);
    expect([again.says("A2"), again.says("A3"), again.typed]).toEqual([before.says("A2"), before.says("A3"), before.typed]);
  }
});

test.each([3, 1, 5, 11])(
  "a column taken out, %i, takes the line of checks down nowhere, and nothing is mended into the wrong columns",
  async (at) => {
    const name = await filled();
    sheet(name).deleteColumn(at);
    const now = await seen(name);
    expect([now.says("A3"), now.says("A2"), now.errors]).toEqual([COLUMN, WITHHELD, []]);
    await expect(mendRunSheet(open.workbook, name)).rejects.toThrow(/^Nothing was done\. A column, or cells/);
    expect((await seen(name)).typed).toEqual(now.typed);
  },
);

test("a column put in and another taken out compensate nowhere", async () => {
  const name = await filled();
  sheet(name).insertColumnBefore(3);
  sheet(name).deleteColumn(10);
  const now = await seen(name);
  expect([now.says("A3"), now.says("A2")]).toEqual([COLUMN, WITHHELD]);
  await expect(mendRunSheet(open.workbook, name)).rejects.toThrow(/"Sample 2" belongs in D6 and stands in E6/);
  expect((await seen(name)).typed).toEqual(now.typed);
});

test.each([14, 12, 24, 21])("a row of boxes deleted, %i, is told as that; a row put in by hand is not, nor is its being taken out", async (row) => {
  const name = await filled();
  const before = await seen(name);
  sheet(name).insertRowBefore(14);
  expect((await seen(name)).says("A3")).not.toBe(ROW);
  sheet(name).deleteRow(14);
  expect((await seen(name)).says("A3")).toBe(before.says("A3"));
  sheet(name).deleteRow(row - 1);
  const now = await seen(name);
  expect([now.says("A3"), now.says("A2"), now.errors]).toEqual([ROW, WITHHELD, []]);
  await expect(mendRunSheet(open.workbook, name)).rejects.toThrow(/^This run sheet was rearranged/);
});
