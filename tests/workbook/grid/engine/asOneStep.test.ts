import { buildRunSheet } from "../../../../src/runsheet/buildRunSheet";
import { growRunSheet } from "../../../../src/runsheet/growing/growRunSheet";
import type { RunSheetOptions } from "../../../../src/runsheet/options/RunSheetOptions";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../../workbench/headlessWorkbook";

jest.setTimeout(120_000);

const OPTIONS: RunSheetOptions = { kind: "ashing", weighIns: 3, intervalMinutes: 20, readability: 0.01, vessel: "tin", replicates: 2 };

let open: HeadlessWorkbook;
beforeEach(async () => void (open = await openHeadlessWorkbook()));
afterEach(() => open.close());

test.each(["weighIns", "ashFirings"] as const)(
  "growing by %s is taken back as one step and done again as one, formulas elsewhere too",
  async (growth) => {
    const plan = buildRunSheet(OPTIONS);
    const sheet = await open.workbook.addSheet(plan);
    await open.type(sheet, plan.startAt, 20);
    await open.type(FIRST_SHEET, "A1", `='${sheet}'!B60+1`);
    // Formulas of the user's own, on the sheet and in place of one of its own.
    await open.type(sheet, "Z5", "=B60&C61");
    await open.type(sheet, "B58", "=B60*2");
    await open.settled();
    const all = async (): Promise<unknown> => {
      const { rows } = await open.workbook.readUsed(sheet);
      const held = rows.flat().filter(({ formula, value }) => formula !== "" || value !== null);
      return [held, (await open.workbook.read(FIRST_SHEET, "A1")).rows];
    };
    const before = await all();
    await growRunSheet(open.workbook, sheet, growth);
    const grown = await all();
    expect((await open.workbook.read(FIRST_SHEET, "A1")).rows[0]?.[0]?.formula).toMatch(/!B6[12]\+1$/);
    expect((await open.workbook.read(sheet, "Z5")).rows[0]?.[0]?.formula).toMatch(/^=B6[12]&C6[23]$/);
    expect(grown).not.toEqual(before);
    open.engine.book.undo();
    await open.settled();
    expect(await all()).toEqual(before);
    open.engine.book.redo();
    await open.settled();
    expect(await all()).toEqual(grown);
  },
);
