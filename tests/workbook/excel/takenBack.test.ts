import {
  cameMeanwhile,
  cellNotBlank,
  changedWhileCopied,
  formulaMayStand,
  hostBusy,
  keptForItsChanges,
  newerStands,
  notPutBack,
  removedMeanwhile,
  sheetsMayBeLeft,
} from "../../../src/problems/workbookProblems";
import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import type { SheetPlan } from "../../../src/workbook/SheetPlan";
import { ExcelHost } from "../../host/ExcelHost";
import { loadClientLibrary } from "../../host/loadClientLibrary";
import { contractFormulas } from "../contractFormulas";

const host = new ExcelHost();
loadClientLibrary(host);
const workbook = new ExcelWorkbook();
beforeEach(() => {
  host.newBook();
  host.calculate = contractFormulas;
});

const plan: SheetPlan = {
  name: "Run",
  cells: [{ cell: "A1", content: "Run sheet" }, { cell: "B2", style: "input" }],
  columnWidths: [],
  entryRules: [],
  frozenRows: 0,
  startAt: "B2",
}; // prettier-ignore

/** Before the request that comes so many after the first. */
const before = (request: number, act: () => void): void => {
  host.meanwhile = (requestsBefore) => requestsBefore === request && act();
};
const busyAt = (after: number, forGood = false): void => host.faults.plan({ code: "ServiceNotAvailable", after, answerLost: false, forGood });
const held = (cell: string) => host.book.sheet("Sheet1").cells.get(cell);

describe("a sheet that could not be finished", () => {
  test.each([
    ["something was typed into a blank box of it", () => host.type("Run", "B2", 65.2), "Run"],
    ["something was typed over a cell of it", () => host.type("Run", "A1", "Tin 3"), "Run"],
    ["something was typed anywhere else on it", () => host.type("Run", "H99", 1), "Run"],
    ["a formula took the place of another", () => host.type("Run", "C3", "=A1*2"), "Run"],
    ["it was renamed", () => host.book.rename(host.book.sheet("Run"), "Tin 3"), "Tin 3"],
  ])("is kept, and said to be, when %s meanwhile; it is the user's then, and its removal is not offered", async (_what, act, name) => {
    busyAt(2);
    before(2, act);
    await expect(workbook.addSheet({ ...plan, cells: [...plan.cells, { cell: "C3", formula: "=1+1" }] })).rejects.toThrow(
      keptForItsChanges(hostBusy, [name]),
    );
    expect(host.book.sheets.map((sheet) => [sheet.name, sheet.names.size])).toEqual([["Sheet1", 0], [name, 0]]); // prettier-ignore
    expect(await workbook.unfinishedSheets()).toEqual([]);
  });

  test("is named when Excel does not answer any more, is found by another pane, and is removed by its id whatever its name is then", async () => {
    busyAt(2, true);
    await expect(workbook.addSheet(plan)).rejects.toThrow(sheetsMayBeLeft(hostBusy, ["Run"]));
    host.faults.none();
    const later = new ExcelWorkbook();
    const [left] = await later.unfinishedSheets();
    host.book.rename(host.book.sheet("Run"), "Mine now");
    host.book.add("Run").write(0, 0, "somebody else's");
    expect(left && (await later.removeUnfinished(left, false))).toBe("ask first");
    expect(left && (await later.removeUnfinished(left, true))).toBe("removed");
    expect(await later.sheetNames()).toEqual(["Sheet1", "Run"]);
  });

  test("is left alone once it carries the mark no more", async () => {
    busyAt(2, true);
    await expect(workbook.addSheet(plan)).rejects.toThrow(hostBusy);
    host.faults.none();
    const [left] = await workbook.unfinishedSheets();
    host.book.sheet("Run").names.clear();
    expect(left && (await workbook.removeUnfinished(left, true))).toBe("gone");
    expect(await workbook.unfinishedSheets()).toEqual([]);
    expect(await workbook.sheetNames()).toEqual(["Sheet1", "Run"]);
  });

  test("is no longer marked when it was finished and only the last answer was lost", async () => {
    host.faults.plan({ code: "ServiceNotAvailable", after: 2, answerLost: true, forGood: false });
    expect(await workbook.addSheet(plan)).toBe("Run");
    expect(await workbook.unfinishedSheets()).toEqual([]);
  });
});

describe("a copy under way", () => {
  test("is never named as wanted before its values stand, and says that it is unfinished", async () => {
    host.type("Sheet1", "A1", "=1+1");
    const seen: string[][] = [];
    host.meanwhile = () => seen.push(host.book.sheets.map(({ name }) => name));
    const read = await workbook.readUsed("Sheet1");
    const beside = { ...plan, name: "Record" };
    await workbook.copyWithValues("Sheet1", { name: "Sheet1 values", read, areas: [{ range: "A1", values: [[2]] }], beside });
    expect(seen.at(-1)).toEqual(["Sheet1", "Unfinished copy of Sheet1", "Record"]);
    expect(seen.flat().filter((name) => name === "Sheet1 values")).toEqual([]);
    expect(await workbook.sheetNames()).toEqual(["Sheet1", "Sheet1 values", "Record"]);
  });
});

describe("writeFormula(address, formula) into a cell that somebody fills just before", () => {
  const write = (): Promise<void> => workbook.writeFormula({ sheet: "Sheet1", cell: "B2" }, "=1+1");

  test.each([
    ["a number", 65.2],
    ["text", "plum"],
    ["text that looks like a date", "'1/2"],
    ["text that looks like a formula", "'=1+1"],
    ["a truth value", true],
    ["a formula", "=A1*2"],
    ["a percentage", "12%"],
  ])("puts %s back as it was and refuses", async (_what, typed) => {
    host.type("Sheet1", "B2", typed);
    const was = structuredClone([held("B2"), host.book.sheet("Sheet1").format(1, 1)]);
    host.type("Sheet1", "B2", null);
    host.book.sheet("Sheet1").looks.clear();
    before(1, () => host.type("Sheet1", "B2", typed));
    await expect(write()).rejects.toThrow(cellNotBlank("B2"));
    await host.quiet();
    expect([held("B2"), host.book.sheet("Sheet1").format(1, 1)]).toEqual(was);
  });

  test("gives the cell back to a spill that came to fill it", async () => {
    before(1, () => host.type("Sheet1", "A1", "=SEQUENCE(3,2)"));
    await expect(write()).rejects.toThrow(cellNotBlank("B2"));
    await host.quiet();
    expect([held("B2"), host.book.sheet("Sheet1").value(1, 1)]).toEqual([undefined, 4]);
  });

  test("says what was there when Excel does not take it back", async () => {
    before(1, () => host.type("Sheet1", "B2", 65.2));
    busyAt(2, true);
    await expect(write()).rejects.toThrow(notPutBack("B2", "65.2"));
  });

  test("says where to look when the answer to the write was lost", async () => {
    host.faults.plan({ code: "ServiceNotAvailable", after: 1, answerLost: true, forGood: true });
    await expect(write()).rejects.toThrow(formulaMayStand(hostBusy, "B2"));
  });
});

test("what is said of an unfinished sheet and of a cell that could not be put back", () => {
  expect(sheetsMayBeLeft("It broke.", ["Unfinished copy of Run", "Run record"])).toBe(
    'It broke. "Unfinished copy of Run" and "Run record" may be left unfinished in the workbook; the pane offers to remove what is left as soon as the workbook answers.',
  );
  expect([keptForItsChanges("It broke.", ["Run"]), keptForItsChanges("It broke.", ["Run", "Run record"])]).toEqual([
    'It broke. "Run" is unfinished, but somebody changed it meanwhile, so it was kept. Move what is yours, then delete the sheet.',
    'It broke. "Run" and "Run record" are unfinished, but somebody changed them meanwhile, so they were kept. Move what is yours, then delete the sheets.',
  ]);
  expect(cameMeanwhile("It broke.", ["Run (2)"])).toBe(
    'It broke. "Run (2)" came into the workbook meanwhile and may be an unfinished sheet of this try. Look at it, and delete it unless somebody needs it.',
  );
  expect(removedMeanwhile).toBe("A sheet was removed while it was being made, so nothing was made. Try again.");
  expect(changedWhileCopied("Tin 3")).toBe(
    '"Tin 3" was changed while it was copied, so no copy was made. Wait until nobody types there, then share again.',
  );
  expect(formulaMayStand("It broke.", "B2")).toBe(
    "It broke. Look at cell B2: the formula may stand there. If something of yours stood there a moment before, undo brings it back.",
  );
  expect(notPutBack("B2", "65.2")).toBe(
    'Something came into cell B2 just before the formula did, and could not be put back. It was "65.2": look at the cell, and type that again if it is not there. Undo brings back anything newer.',
  );
  expect(newerStands("B2", ["65.2", "65.3"])).toBe(
    'Cell B2 is being typed into, so the formula was not kept there. What stands there now is the newest; before that it was "65.2" and "65.3".',
  );
});
