import { SetSelectionsOperation, type ISetSelectionsOperationParams } from "@univerjs/sheets";
import type { SheetPlan } from "../../../src/workbook/SheetPlan";
import { openHeadlessWorkbook } from "../../workbench/headlessWorkbook";

jest.setTimeout(30_000);

const plan: SheetPlan = {
  name: "Run",
  cells: [2, 3, 4, 5].map((row) => ({ cell: `A${row}`, content: row })),
  columnWidths: [],
  entryRules: [],
  frozenRows: 0,
  startAt: "A1",
};

test.each([
  ["above the new rows", "B2", "B2"],
  ["below the first of them", "B4", "B6"],
  ["below both", "A5", "A8"],
])("whoever is at a cell %s stays at it while rows are put in, and it is brought back into view", async (_, cell, stands) => {
  const { workbook, engine, close } = await openHeadlessWorkbook();
  const sheet = await workbook.addSheet(plan);
  await workbook.select({ sheet, cell });
  const shown: unknown[] = [];
  engine.api.addEvent(engine.api.Event.CommandExecuted, ({ id, params }) => {
    if (id === SetSelectionsOperation.id) shown.push((params as ISetSelectionsOperationParams).reveal);
  });
  const read = await workbook.readUsed(sheet);
  const steps = [
    { above: 3, count: 2 },
    { above: 7, count: 1 },
  ];
  await workbook.growSheet(sheet, { read, plan, steps, written: [], dressed: [], begun: undefined, ended: undefined });
  expect(await workbook.selectedCell()).toEqual({ sheet, cell: stands });
  expect(shown.at(-1)).toBe(true);
  close();
});
