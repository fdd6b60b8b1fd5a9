import {
  cameMeanwhile,
  cellNotBlank,
  changedWhileCopied,
  formulaMayStand,
  hostBusy,
  keptForItsChanges,
  nameJustTaken,
  newerStands,
  notPutBack,
  removedMeanwhile,
  sheetsMayBeLeft,
  typedIntoCopy,
} from "../../../src/problems/workbook/workbookProblems";
import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import type { SheetPlan } from "../../../src/workbook/SheetPlan";
import type { CopyMade, RangeReading } from "../../../src/workbook/Workbook";
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

describe("unfinishedSheets() and removeUnfinished(sheet)", () => {
  const begunElsewhere = (minutesAgo: number): string => {
    const mark = `Retort_unfinished_${(Date.now() - minutesAgo * 60_000).toString(36)}_k3w_1`;
    host.book.add("Theirs").names.set(mark, { formula: '="x"', visible: false });
    return mark;
  };

  test.each([
    ["one that another pane has just begun, or whose clock is a little ahead,", -1, true],
    ["one that another pane began some minutes ago", 9, true],
    ["one that another pane began long ago", 11, false],
    ["one begun under a clock that is an hour ahead", -60, false],
  ])("say of %s whether it may still be under way", async (_which, minutesAgo, mayBeUnderWay) => {
    const mark = begunElsewhere(minutesAgo);
    expect(await workbook.unfinishedSheets()).toEqual([{ id: host.book.sheet("Theirs").id, name: "Theirs", mark, mayBeUnderWay }]);
  });

  test("know the mark of version 0.2.0", async () => {
    host.book.add("Old").names.set("Retort_unfinished", { formula: '="x-y"', visible: false });
    const [old] = await workbook.unfinishedSheets();
    expect(old).toMatchObject({ name: "Old", mayBeUnderWay: false });
    expect(old && (await workbook.removeUnfinished(old, false))).toBe("ask first");
    expect(old && (await workbook.removeUnfinished(old, true))).toBe("removed");
  });

  test("leave out what this pane is making, and a duplicate of it, and never remove it", async () => {
    const listed: unknown[] = [];
    let removal: Promise<string> | undefined;
    before(2, () => {
      const sheet = host.book.sheet("Run");
      const [mark = ""] = sheet.names.keys();
      void workbook.unfinishedSheets().then((sheets) => listed.push(sheets));
      removal = workbook.removeUnfinished({ id: sheet.id, name: "Run", mark, mayBeUnderWay: false }, true);
    });
    const asked = workbook.addSheet(plan);
    expect(await asked).toBe("Run");
    await host.quiet();
    expect([await removal, listed.flat()]).toEqual(["gone", []]);
    expect(await workbook.sheetNames()).toEqual(["Sheet1", "Run"]);
  });

  test("leave a sheet alone that is finished between the look and the removal", async () => {
    begunElsewhere(30);
    const [sheet] = await workbook.unfinishedSheets();
    host.startCounting((requestsBefore) => requestsBefore === 1 && host.book.sheet("Theirs").names.clear());
    expect(sheet && (await workbook.removeUnfinished(sheet, true))).toBe("gone");
    expect(await workbook.sheetNames()).toEqual(["Sheet1", "Theirs"]);
  });
});

describe("sharing a sheet that was begun and never finished", () => {
  test.each(["Retort_unfinished", "Retort_unfinished_abc_def_1"])("makes a copy that does not inherit the mark %s", async (mark) => {
    host.type("Sheet1", "A1", 25);
    host.book.sheet("Sheet1").names.set(mark, { formula: '="x"', visible: false });
    const read = await workbook.readUsed("Sheet1");
    const made = await workbook.copyWithValues("Sheet1", { name: "Shared", read, areas: [], beside: { ...plan, name: "Record" } });
    expect(made).toEqual({ copy: "Shared", beside: "Record", touched: false });
    expect(host.book.sheets.map(({ name, names }) => [name, [...names.keys()]])).toEqual([["Sheet1", [mark]], ["Shared", []], ["Record", []]]); // prettier-ignore
  });
});

describe("a copy under way", () => {
  const copyOfSheet1 = async (): Promise<{ copy: string; beside: string; touched: boolean }> => {
    const read = await workbook.readUsed("Sheet1");
    host.startCounting(host.meanwhile);
    return workbook.copyWithValues("Sheet1", { name: "Shared", read, areas: [{ range: "A1", values: [[2]] }], beside: { ...plan, name: "Record" } });
  };

  test("is taken away where the sheet was changed between the reading and the copy", async () => {
    host.type("Sheet1", "A1", "=1+1");
    before(1, () => host.type("Sheet1", "C3", 7));
    await expect(copyOfSheet1()).rejects.toThrow(changedWhileCopied("Sheet1"));
    expect(await workbook.sheetNames()).toEqual(["Sheet1"]);
  });

  test("gives back what was typed where a value was written just then, and is kept", async () => {
    host.type("Sheet1", "A1", "=1+1");
    before(2, () => host.type("Unfinished copy of Sheet1", "A1", 65.2));
    await expect(copyOfSheet1()).rejects.toThrow(keptForItsChanges(typedIntoCopy, ["Unfinished copy of Sheet1"]));
    expect(host.book.sheet("Unfinished copy of Sheet1").value(0, 0)).toBe(65.2);
    expect(await workbook.sheetNames()).toEqual(["Sheet1", "Unfinished copy of Sheet1"]);
  });

  test("is said to have been typed into where it is finished all the same", async () => {
    host.type("Sheet1", "A1", "=1+1");
    before(3, () => host.type("Unfinished copy of Sheet1", "F9", 65.2));
    expect(await copyOfSheet1()).toEqual({ copy: "Shared", beside: "Record", touched: true });
  });

  test("says what it is called at the end, and that it is gone where somebody removed a part of it", async () => {
    host.type("Sheet1", "A1", "=1+1");
    before(3, () => host.book.rename(host.book.sheet("Record"), "My record"));
    expect(await copyOfSheet1()).toEqual({ copy: "Shared", beside: "My record", touched: false });
    host.book.remove(host.book.sheet("Shared"));
    before(3, () => host.book.remove(host.book.sheet("Record")));
    await expect(copyOfSheet1()).rejects.toThrow(removedMeanwhile);
    expect(await workbook.sheetNames()).toEqual(["Sheet1", "My record"]);
  });

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

describe("a copy of a sheet too large for one answer", () => {
  const read = (): Promise<RangeReading> => workbook.readUsed("Sheet1");
  const copy = async (reading: RangeReading): Promise<CopyMade> =>
    workbook.copyWithValues("Sheet1", {
      name: "Shared",
      read: reading,
      areas: [{ range: "B2", values: [[2]] }],
      beside: { ...plan, name: "Record" },
    });
  beforeEach(() => {
    const sheet = host.book.sheet("Sheet1");
    // Few cells, far apart: what counts is the area around them.
    for (const [row, column] of [[0, 0], [5000, 3], [6999, 2]] as const) sheet.write(row, column, 1); // prettier-ignore
    host.type("Sheet1", "B2", "=1+1");
  });

  test("is made, compared with what was read, and looked at again when it is finished", async () => {
    expect(await copy(await read())).toEqual({ copy: "Shared", beside: "Record", touched: false });
    const before = await read();
    host.type("Sheet1", "D5001", "changed");
    await expect(copy({ ...before })).rejects.toThrow(nameJustTaken);
    host.book.remove(host.book.sheet("Shared"));
    host.book.remove(host.book.sheet("Record"));
    await expect(copy(before)).rejects.toThrow(changedWhileCopied("Sheet1"));
    expect(await workbook.sheetNames()).toEqual(["Sheet1"]);
  });

  test("is known to be finished when only the last answer was lost", async () => {
    const reading = await read();
    const requests: number[] = [];
    host.startCounting((requestsBefore) => requests.push(requestsBefore));
    await copy(reading);
    host.book.sheets.slice(1).forEach((sheet) => host.book.remove(sheet));
    host.startCounting(() => undefined);
    host.faults.plan({ code: "ServiceNotAvailable", after: requests.length - 1, answerLost: true, forGood: false });
    expect(await copy(reading)).toEqual({ copy: "Shared", beside: "Record", touched: false });
  });

  test.each([
    ["taken away when it cannot be finished", undefined, ["Sheet1"]],
    ["kept when somebody has typed between its cells", "B6000", ["Sheet1", "Unfinished copy of Sheet1"]],
    ["kept when somebody has typed below its cells", "A9000", ["Sheet1", "Unfinished copy of Sheet1"]],
  ])("is %s", async (_what, cell, left) => {
    const reading = await read();
    host.startCounting((requestsBefore) => {
      if (cell !== undefined && requestsBefore === 5) host.type("Unfinished copy of Sheet1", cell, 65.2);
    });
    busyAt(5);
    await expect(copy(reading)).rejects.toThrow(hostBusy);
    expect(await workbook.sheetNames()).toEqual(left);
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

  test("leaves something newer alone, and says what stood there before", async () => {
    before(1, () => host.type("Sheet1", "B2", 65.2));
    const first = host.meanwhile;
    host.meanwhile = (requestsBefore) => {
      first(requestsBefore);
      if (requestsBefore === 2) host.type("Sheet1", "B2", 65.3);
    };
    await expect(write()).rejects.toThrow(newerStands("B2", ["65.2"]));
    expect(held("B2")).toEqual({ value: 65.3 });
  });

  test("puts back something newer that came just before the putting back, and says what stood there before", async () => {
    host.meanwhile = (requestsBefore) => {
      if (requestsBefore === 1) host.type("Sheet1", "B2", 65.2);
      if (requestsBefore === 3) host.type("Sheet1", "B2", 65.3);
    };
    await expect(write()).rejects.toThrow(newerStands("B2", ["65.2"]));
    expect(held("B2")).toEqual({ value: 65.3 });
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
  expect(keptForItsChanges(typedIntoCopy, ["Unfinished copy of Run"])).toBe(
    'Somebody typed into the copy while it was being made, so it was not finished. "Unfinished copy of Run" is unfinished, but somebody changed it meanwhile, so it was kept. Move what is yours, then delete the sheet.',
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
