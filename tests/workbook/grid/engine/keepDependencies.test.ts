import { IDependencyManagerService } from "@univerjs/engine-formula";
import type { CellContent } from "../../../../src/workbook/Workbook";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../../workbench/headlessWorkbook";

jest.setTimeout(120_000);

const SHEETS = [FIRST_SHEET, "Two", "Three"];
const bare = (name: string) => ({ name, cells: [], columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" });

let open: HeadlessWorkbook;
beforeEach(async () => {
  open = await openHeadlessWorkbook();
  for (const name of SHEETS.slice(1)) await open.workbook.addSheet(bare(name));
  await open.settled();
});
afterEach(() => open.close());

const typed = async (sheet: string, cell: string, content: CellContent): Promise<void> => {
  await open.type(sheet, cell, content);
  await open.settled();
};

/** Ranges of several cells that the engine has noted as read on a sheet. */
function noted(sheet: string): number {
  const manager = open.engine.injector.get(IDependencyManagerService) as unknown as {
    readonly _dependencyRTreeCache: { getTree(unit: string, sheet: string): { all(): unknown[] } };
  };
  return manager._dependencyRTreeCache.getTree(open.engine.book.getId(), open.engine.book.getSheetByName(sheet)?.getSheetId() ?? "").all().length;
}

test("what formulas read is noted once, however often cells change", async () => {
  for (let row = 1; row <= 9; row++) await typed(FIRST_SHEET, `C${row}`, `=SUM(A${row}:B${row})`);
  expect(noted(FIRST_SHEET)).toBe(9);
  for (const grams of [1, 2, 3]) await typed(FIRST_SHEET, "A1", grams);
  expect(noted(FIRST_SHEET)).toBe(9);
  await typed(FIRST_SHEET, "C1", "=SUM(A1:B9)");
  await typed(FIRST_SHEET, "A9", 4);
  expect([noted(FIRST_SHEET), (await open.workbook.read(FIRST_SHEET, "C1")).rows[0]?.[0]?.value]).toEqual([9, 7]);
});

test("nothing is left of what a formula read once it is another, is gone, or moved", async () => {
  const complained = jest.spyOn(console, "error").mockImplementation(() => undefined);
  await typed(FIRST_SHEET, "C1", "=SUM(A1:B2)+SUM(Two!A1:B2)+SUM(Two!C5:C9)");
  expect([noted(FIRST_SHEET), noted("Two")]).toEqual([1, 2]);
  open.engine.book.getSheetByName(FIRST_SHEET)?.insertRowsBefore(4, 1);
  await open.settled();
  expect([noted(FIRST_SHEET), noted("Two")]).toEqual([1, 2]);
  await typed("Two", "A1", 3);
  await typed(FIRST_SHEET, "C1", "=SUM(Two!A1:B1)");
  expect([noted(FIRST_SHEET), noted("Two")]).toEqual([0, 1]);
  await typed(FIRST_SHEET, "C1", "");
  await typed("Two", "A1", 4);
  expect([noted(FIRST_SHEET), noted("Two")]).toEqual([0, 0]);
  expect(complained).not.toHaveBeenCalled();
  complained.mockRestore();
});

test("a formula goes on following a sheet that had rows put in, was renamed, or came later", async () => {
  const shown = async (): Promise<unknown> => (await open.workbook.read(FIRST_SHEET, "A1:A3")).rows.map(([cell]) => cell?.value);
  await typed(FIRST_SHEET, "A1", "=Two!A1*2");
  await typed(FIRST_SHEET, "A2", "=SUM(Two!A1:A9)");
  await typed(FIRST_SHEET, "A3", "=SUM(A1:A2)");
  await typed("Two", "A1", 5);
  expect(await shown()).toEqual([10, 5, 15]);
  open.engine.book.getSheetByName("Two")?.insertRowsBefore(0, 2);
  await open.settled();
  await typed("Two", "A3", 6);
  expect(await shown()).toEqual([12, 6, 18]);
  open.engine.book.getSheetByName("Two")?.setName("Oven 2");
  await open.settled();
  await typed("Oven 2", "A3", 7);
  expect(await shown()).toEqual([14, 7, 21]);
  expect((await open.workbook.read(FIRST_SHEET, "A1")).rows[0]?.[0]?.formula).toBe("='Oven 2'!A3*2");
});

test("after any edits, rows put in and sheets added, a full calculation changes no cell", async () => {
  let seed = 5;
  const random = (below: number): number => (seed = (seed * 48271) % 2147483647) % below;
  const at = (row: number): string => `${"ABCD"[random(4)]}${row}`;
  const values = async (): Promise<CellContent[][]> =>
    Promise.all(SHEETS.map(async (sheet) => (await open.workbook.read(sheet, "A1:D30")).rows.flat().map(({ value }) => value)));
  const formulas = [(to: string) => `=SUM($A$1:${to})`, (to: string) => `=${to}+1`, (to: string) => `=COUNT(${to}:${to})`];
  for (let step = 0; step < 60; step++) {
    const sheet = SHEETS[random(SHEETS.length)] as string;
    const row = 2 + random(16);
    const chance = random(9);
    if (chance === 0) open.engine.book.getSheetByName(sheet)?.insertRowsBefore(random(12), 1 + random(2));
    else if (chance === 1) await open.workbook.addSheet({ ...bare("More"), cells: [{ cell: "B1", formula: `=SUM(${sheet}!A1:D9)` }] });
    else if (chance < 4) await open.type(sheet, at(1), random(60));
    // Rows above alone, so that nothing depends on itself.
    else await open.type(sheet, at(row), (formulas[random(3)] as (to: string) => string)(at(1 + random(row - 1))));
    if (random(3) > 0) await open.settled();
  }
  await open.settled();
  const after = await values();
  open.engine.api.getFormula().executeCalculation();
  await open.engine.api.getFormula().onCalculationEnd();
  await open.settled();
  expect(await values()).toEqual(after);
});
