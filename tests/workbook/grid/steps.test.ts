import { IUndoRedoService } from "@univerjs/core";
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { gridSheet, replaceSheets } from "../../../src/workbook/grid/writing/GridSheet";
import type { SheetPlan } from "../../../src/workbook/SheetPlan";
import type { CopyWithValues } from "../../../src/workbook/Workbook";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";

jest.setTimeout(60_000);

let open: HeadlessWorkbook;
beforeEach(async () => void (open = await openHeadlessWorkbook()));
afterEach(() => open.close());

const plain = (name: string, content: number): SheetPlan => ({
  ...{ name, columnWidths: [], frozenRows: 0, startAt: "A1" },
  cells: [
    { cell: "A1", content },
    { cell: "B1", formula: "=A1*2" },
  ],
  entryRules: [
    { range: "A1", allow: { kind: "number", atLeast: 0, atMost: 500 }, promptTitle: "Grams", prompt: "With the pan.", refusal: "A mass." },
  ],
});

const steps = (): readonly [undo: boolean, redo: boolean] => {
  const history = open.engine.injector.get(IUndoRedoService);
  return [history.pitchTopUndoElement() !== null, history.pitchTopRedoElement() !== null];
};

async function undo(): Promise<void> {
  open.engine.book.undo();
  await open.engine.settled();
}

async function redo(): Promise<void> {
  open.engine.book.redo();
  await open.engine.settled();
}

/** Everything that the sheets hold and show, and how many rules each has. */
async function all(): Promise<unknown> {
  const names = await open.workbook.sheetNames();
  const held = [];
  for (const name of names) {
    const cells = (await open.workbook.readUsed(name)).rows.flat().map(({ cell, formula, shown }) => [cell, formula, shown]);
    held.push([name, cells.filter(([, formula, shown]) => formula !== "" || shown !== ""), (await open.workbook.cellsBeside(name)).rules.length]);
  }
  return held;
}

test("sheets that come in place of all others are no step, and nothing done before them can be taken back", async () => {
  await open.type(FIRST_SHEET, "A1", 5);
  await open.type(FIRST_SHEET, "A2", 6);
  await undo();
  expect(steps()).toEqual([true, true]);
  await replaceSheets(open.engine, [gridSheet(plain("Runs", 40), "Runs"), gridSheet(plain("After", 41), "After")]);
  expect(steps()).toEqual([false, false]);
  const opened = await all();
  await open.type("Runs", "A1", 60);
  await open.settled();
  for (let again = 0; again < 4; again++) await undo();
  expect(await all()).toEqual(opened);
});

test("where sheets cannot come in, what was done before can still be taken back", async () => {
  const before = await all();
  await open.type(FIRST_SHEET, "A1", 5);
  const twice = gridSheet(plain("Runs", 40), "Runs");
  await expect(replaceSheets(open.engine, [twice, { ...twice, rules: null as never }])).rejects.toThrow();
  expect(await open.workbook.sheetNames()).toEqual([FIRST_SHEET]);
  await undo();
  expect([await all(), steps()[0]]).toEqual([before, false]);
});

test("a new sheet is taken back whole as one step, with its rules, and made again", async () => {
  await open.type(FIRST_SHEET, "A1", 5);
  await open.settled();
  const before = await all();
  await open.workbook.addSheet(buildRunSheet({ kind: "drying", weighIns: 3, intervalMinutes: 20, readability: 0.01, vessel: "tin", replicates: 2 }));
  const after = await all();
  await undo();
  expect(await all()).toEqual(before);
  await redo();
  expect(await all()).toEqual(after);
  await undo();
  await undo();
  expect([await open.workbook.sheetNames(), (await open.workbook.read(FIRST_SHEET, "A1")).rows[0]?.[0]?.value, steps()[0]]).toEqual([
    [FIRST_SHEET],
    null,
    false,
  ]);
});

const COPY: Omit<CopyWithValues, "read"> = { name: "Copy", areas: [{ range: "B1", values: [[80]] }], banner: "D1", beside: plain("Record", 1) };
const PLAIN: Omit<CopyWithValues, "read"> = {
  ...COPY,
  areas: [],
  keepsRules: true,
  formulas: [{ range: "B1", formula: "=Copy!A1*Workings!A1" }],
  further: [{ ...plain("Workings", 2), isHidden: true }],
};

test.each([
  ["values", COPY, ["Copy", "Record"]],
  ["plain cells", PLAIN, ["Copy", "Record", "Workings"]],
] as const)("a copy with %s and the sheets beside it are one step; a step in between stays one of its own", async (_way, wanted, made) => {
  const sheet = await open.workbook.addSheet(plain("Runs", 40));
  const before = await all();
  const read = await open.workbook.readUsed(sheet);
  const copying = open.workbook.copyWithValues(sheet, { ...wanted, read });
  await new Promise((resolve) => setTimeout(resolve, 20));
  await open.type(FIRST_SHEET, "A1", 5);
  await copying;
  const after = await all();
  expect([...(await open.workbook.sheetNames())].sort()).toEqual([...made, "Runs", FIRST_SHEET].sort());
  await undo();
  expect([await open.workbook.sheetNames(), (await open.workbook.read(FIRST_SHEET, "A1")).rows[0]?.[0]?.value]).toEqual([[FIRST_SHEET, "Runs"], 5]);
  await redo();
  expect(await all()).toEqual(after);
  await undo();
  await undo();
  expect(await all()).toEqual(before);
});

test("a copy that failed leaves no step that would bring it back", async () => {
  const sheet = await open.workbook.addSheet(plain("Runs", 40));
  const read = await open.workbook.readUsed(sheet);
  const stopped = new Error("stopped");
  let asked = 0;
  const goOn = (): void => {
    if (++asked > 1) throw stopped;
  };
  await expect(open.workbook.copyWithValues(sheet, { ...COPY, read, goOn })).rejects.toThrow(stopped);
  expect(await open.workbook.sheetNames()).toEqual([FIRST_SHEET, sheet]);
  await undo();
  expect([await open.workbook.sheetNames(), steps()[0]]).toEqual([[FIRST_SHEET], false]);
});

test("formulas that are entered again are one step", async () => {
  await open.type(FIRST_SHEET, "A1", "'=1+1");
  await open.type(FIRST_SHEET, "A2", "'=2+2");
  await open.settled();
  const before = await all();
  const cells = [1, 2].map((row) => ({ cell: `A${row}`, held: `=${row}+${row}`, formula: `=${row}+${row}` }));
  expect((await open.workbook.reenter(FIRST_SHEET, cells)).entered).toEqual(["A1", "A2"]);
  await undo();
  expect(await all()).toEqual(before);
});
