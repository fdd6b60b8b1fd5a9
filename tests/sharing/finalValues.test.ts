import {
  calculatesWhenAsked,
  copyTouched,
  keepsChanging,
  StaysPending,
  staysPending,
  workbookCalculating,
} from "../../src/problems/sharing/sharingProblems";
import { finalValues } from "../../src/sharing/finalValues";
import { shareAsValues } from "../../src/sharing/shareAsValues";
import type { CellReading, RangeReading } from "../../src/workbook/Workbook";
import { MemoryWorkbook, reading } from "./MemoryWorkbook";

const moisture = reading("B4", { formula: "=RETORT.MOISTURE.WET(B1,B2,B3)", value: 0.35 });
const noPause = { pause: async () => undefined };
const state = (of: "done" | "calculating" | "pending", manual = false) => ({ state: of, manual });

/** A workbook whose calculation goes through these states, one at each question, and stays in the last. */
function calculating(...states: readonly ReturnType<typeof state>[]): MemoryWorkbook {
  const workbook = new MemoryWorkbook("Tin 3", [moisture]);
  let asked = 0;
  workbook.calculation = async () => states[Math.min(asked++, states.length - 1)] ?? state("done");
  return workbook;
}

const given = (...cells: readonly CellReading[]): RangeReading => ({ sheet: "Tin 3", range: "A1", rows: [[...cells]] });

describe("finalValues(workbook, sheet)", () => {
  test.each([
    ["when nothing calculates", [state("done")]],
    ["after waiting for a calculation", [state("calculating"), state("calculating"), state("done")]],
    ["after waiting for one that begins while the sheet is read", [state("done"), state("calculating"), state("done")]],
    ["in manual mode with nothing waiting", [state("done", true)]],
  ])("gives the values %s", async (_when, states) => {
    expect((await finalValues(calculating(...states), "Tin 3", noPause)).rows.flat()).toEqual([moisture]);
  });

  test.each([
    ["a calculation that does not end", state("calculating"), workbookCalculating("Tin 3")],
    ["manual mode with something waiting", state("pending", true), calculatesWhenAsked("Tin 3")],
    ["a state that stays pending", state("pending"), staysPending("Tin 3")],
  ])("refuses %s, and no sheet is made", async (_what, stays, problem) => {
    const workbook = calculating(stays);
    await expect(shareAsValues(workbook, "Tin 3", "2026-03-14", noPause)).rejects.toThrow(problem.message);
    expect(await workbook.sheetNames()).toEqual(["Tin 3"]);
  });

  test("lets the user go on only where the state stays pending by itself", async () => {
    expect(staysPending("Tin 3")).toBeInstanceOf(StaysPending);
    expect([workbookCalculating("Tin 3"), calculatesWhenAsked("Tin 3")].filter((problem) => problem instanceof StaysPending)).toEqual([]);
    const shared = await shareAsValues(calculating(state("pending")), "Tin 3", "2026-03-14", { ...noPause, asShown: true });
    expect(shared.copy).toBe("Tin 3 values");
  });

  test("refuses values that differ from one reading to the next, also when the user goes on with what is shown", async () => {
    for (const asShown of [false, true]) {
      const workbook = new MemoryWorkbook("Tin 3", []);
      let read = 0;
      workbook.readUsed = async () => given({ ...moisture, value: read++ });
      await expect(finalValues(workbook, "Tin 3", { ...noPause, asShown })).rejects.toThrow(keepsChanging("Tin 3").message);
    }
  });

  test("waits some seconds and no more", async () => {
    const paused: number[] = [];
    const pause = async (milliseconds: number): Promise<void> => void paused.push(milliseconds);
    await expect(finalValues(calculating(state("calculating")), "Tin 3", { pause })).rejects.toThrow(workbookCalculating("Tin 3").message);
    const waited = paused.reduce((sum, milliseconds) => sum + milliseconds, 0);
    expect(waited).toBeGreaterThan(2000);
    expect(waited).toBeLessThan(10_000);
  });
});

describe("shareAsValues(workbook, sheet, date) while somebody else works", () => {
  test("hands over what was read, so that the workbook can refuse to copy anything else", async () => {
    const workbook = new MemoryWorkbook("Tin 3", [reading("B1", { value: 25 }), moisture]);
    const copy = workbook.copyWithValues.bind(workbook);
    const read: RangeReading[] = [];
    workbook.copyWithValues = (sheet, wanted) => {
      read.push(wanted.read);
      return copy(sheet, wanted);
    };
    await shareAsValues(workbook, "Tin 3", "2026-03-14");
    expect(read.map(({ rows }) => rows.flat())).toEqual([[reading("B1", { value: 25 }), moisture]]);
  });

  test("tells that the copy was typed into, and under which names copy and record ended up", async () => {
    const workbook = new MemoryWorkbook("Tin 3", [moisture]);
    workbook.copyWithValues = async () => ({ copy: "Tin 3 values", beside: "My record", touched: true });
    expect(await shareAsValues(workbook, "Tin 3", "2026-03-14")).toEqual({
      copy: "Tin 3 values",
      record: "My record",
      touched: true,
      put: { rules: [], namesWritten: [], namesGone: [], namesKept: [] },
      unread: [],
      frozenCells: 1,
    });
  });
});

test("what is said of values that are not final", () => {
  const said = [workbookCalculating, calculatesWhenAsked, staysPending, keepsChanging].map((problem) => problem("Tin 3").message);
  expect([...said, copyTouched("Tin 3 values", "Tin 3")]).toEqual([
    'sheet: the workbook is calculating, so values on "Tin 3" may be from before. Wait until it has finished, then share again.',
    'sheet: the workbook calculates only when asked to and something waits, so values on "Tin 3" may be from before. Press F9, then share again.',
    'sheet: the workbook says that something waits to be calculated, though nothing is under way, so values on "Tin 3" may be from before. Press F9 and share again, or share the values shown now.',
    'sheet: values on "Tin 3" changed while they were read. Wait until nothing changes any more, then share again.',
    'Something was typed into "Tin 3 values" while it was being made: compare it with "Tin 3" before you send it.',
  ]);
});
