// On the local workbook's engine; the run is invented: hazel shells from a community orchard.
import { shareAsValues } from "../../src/sharing/shareAsValues";
import { valuesBanner } from "../../src/problems/sharing/sharedCopyWords";
import { placeOf } from "../../src/runsheet/expressions/formulaText";
import { openRunSheet } from "../runsheet/openRunSheet";
import { FIRST_SHEET, openHeadlessWorkbook } from "../workbench/headlessWorkbook";

const DAY = "2026-03-14";

test("a shared run sheet shows the same everywhere, holds no cell formula, and is recorded call by call", async () => {
  const sheet = await openRunSheet({ kind: "charring", weighIns: 4, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: 2 });
  await sheet.vessel(25);
  for (const [index, grams] of [65.2, 52.1, 51.22, 51.21].entries()) await sheet.round(index + 1, index / 48, grams);
  await sheet.fire("charring", 1, 32.54);
  await sheet.fire("charring", 2, 32.53);
  const before = (await sheet.workbook.readUsed(sheet.name)).rows.flat();
  const { copy, record, frozenCells } = await shareAsValues(sheet.workbook, sheet.name, DAY);

  const after = (await sheet.workbook.readUsed(copy)).rows.flat();
  const shown = (cells: typeof before) => cells.filter((cell) => cell.shown !== "").map((cell) => [cell.cell, cell.shown]);
  // In place of what to weigh next, which nobody weighs there.
  expect(after.find(({ cell }) => cell === "D1")?.value).toBe(valuesBanner(DAY));
  expect(shown(after.filter(({ cell }) => cell !== "D1"))).toEqual(shown(before.filter(({ cell }) => cell !== "D1")));
  expect(after.filter(({ formula }) => formula !== "")).toEqual([]);
  expect(frozenCells).toBe(before.filter(({ formula }) => formula !== "").length);
  expect((await sheet.workbook.readUsed(sheet.name)).rows.flat()).toEqual(before);

  const recorded = (await sheet.workbook.readUsed(record)).rows.flat();
  expect(recorded.filter(({ formula }) => formula !== "")).toEqual([]);
  const steady = before.find(({ formula, value }) => formula.includes("RETORT.CONSTANTWEIGHT(") && typeof value === "number");
  expect(steady?.cell).toBe("L5");
  // The other sample's formula is the same, moved along.
  const told = ["L5:M5", steady?.formula, steady?.value, `L5 ${String(steady?.value)}; M5 blank`, DAY];
  expect(recorded.map(({ value }) => value)).toEqual(expect.arrayContaining(told));
  sheet.close();
}, 60_000);

test("a spill is shared whole, and text that begins with = or @ stays text", async () => {
  const open = await openHeadlessWorkbook();
  const typed: Record<string, string> = { A1: '=RETORT.ATOMS("C8H18")', H1: '=CONCATENATE("=","1+1")', H2: '="@home"', H3: '=""' };
  for (const [cell, content] of Object.entries(typed)) await open.type(FIRST_SHEET, cell, content);
  await open.settled();
  const before = (await open.workbook.readUsed(FIRST_SHEET)).rows.flat();
  expect(before.find(({ cell }) => cell === "A1")?.spill).not.toBe("");

  const { copy } = await shareAsValues(open.workbook, FIRST_SHEET, DAY);
  const after = (await open.workbook.readUsed(copy)).rows.flat();
  const values = (cells: typeof before) => cells.filter(({ value }) => value !== null && value !== "").map(({ cell, value }) => [cell, value]);
  // In the first row that is blank from end to end, as in a file: below the spill, which fills three.
  expect(values(after.filter(({ cell }) => cell !== "A4"))).toEqual(values(before));
  expect(after.find(({ cell }) => cell === "A4")?.value).toBe(valuesBanner(DAY));
  expect(values(after)).toEqual(expect.arrayContaining([["H1", "=1+1"], ["H2", "@home"]])); // prettier-ignore
  expect(after.filter(({ formula, spill }) => formula !== "" || spill !== "")).toEqual([]);
  expect(after.find(({ cell }) => cell === "H3")?.value ?? null).toBeNull();
  open.close();
}, 60_000);

test("a run sheet with a call in error is refused, and no sheet is added", async () => {
  const sheet = await openRunSheet({ kind: "charring", weighIns: 4, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: 1 });
  await sheet.vessel(25);
  for (const [index, grams] of [65.2, 52.1, 51.22, 51.21].entries()) await sheet.round(index + 1, index / 48, grams);
  // A limit typed as percent: CONSTANTWEIGHT refuses it.
  await sheet.type(sheet.sheet.settings.criterion, "of last");
  await sheet.type(sheet.sheet.settings.limit, 0.1);
  const sheets = await sheet.workbook.sheetNames();
  const steady = placeOf(sheet.sheet.drying.steady(1));
  await expect(shareAsValues(sheet.workbook, sheet.name, DAY)).rejects.toMatchObject({
    name: "InputProblem",
    message: expect.stringMatching(new RegExp(`^sheet: ${steady} on "Charring run" is in error \\(#VALUE!\\)\\. `)),
  });
  expect(await sheet.workbook.sheetNames()).toEqual(sheets);
  sheet.close();
}, 60_000);
