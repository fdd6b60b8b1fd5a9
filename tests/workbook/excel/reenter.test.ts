import { reentryBrokeOff, workbookProtected } from "../../../src/problems/workbook/workbookProblems";
import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import type { Reentered, Reentry } from "../../../src/workbook/Workbook";
import { ExcelHost } from "../../host/ExcelHost";
import { loadClientLibrary } from "../../host/loadClientLibrary";
import { everyFault } from "./faults/faultTable";

const host = new ExcelHost();
host.calculate = (formula) => (formula.includes("_xldudf") ? "#NAME?" : 100.086);
loadClientLibrary(host);
const workbook = new ExcelWorkbook();

const CELLS: readonly Reentry[] = [
  { cell: "B1", held: "=_xldudf_RETORT_MOLARMASS(A1)", formula: "=RETORT.MOLARMASS(A1)" },
  { cell: "B2", held: "=[1]!RETORT.MOLARMASS(A2)", formula: "=RETORT.MOLARMASS(A2)" },
  { cell: "B3", held: "#NAME?", formula: "=RETORT.MOLARMASS(A3)" },
];
const OTHERS = [
  ["A1", "CaCO3"],
  ["A2", "MgCO3"],
  ["A3", "'=not a formula"],
  ["C1", "=B1*2"],
  ["C2", "#N/A"],
] as const;

beforeEach(() => {
  host.newBook();
  for (const [cell, content] of OTHERS) host.type("Sheet1", cell, content);
  for (const { cell, held } of CELLS) host.type("Sheet1", cell, held);
});

const cells = () => host.book.sheet("Sheet1").cells;
const held = (cell: string): unknown => {
  const state = cells().get(cell);
  return state?.formula ?? JSON.stringify(state?.value);
};
const othersHeld = (): unknown[] => OTHERS.map(([cell]) => held(cell));
const ALL = CELLS.map(({ cell }) => cell);
const holdsFormula = ({ cell, formula }: Reentry): boolean => held(cell) === formula;

describe("reenter(sheet, cells) in Excel", () => {
  test("enters each formula again in two requests, as one step of undo, and touches no other cell", async () => {
    const others = othersHeld();
    const before = host.requests.length;
    expect(await workbook.reenter("Sheet1", CELLS)).toEqual({ entered: ALL, changed: [] });
    expect(CELLS.filter(holdsFormula)).toHaveLength(CELLS.length);
    expect(othersHeld()).toEqual(others);
    expect(host.requests.length - before).toBeLessThanOrEqual(3);
    expect(await workbook.reenter("Sheet1", [])).toEqual({ entered: [], changed: [] });
  });

  test("goes on where Excel refuses the group of undo", async () => {
    host.failNext("UndoNotSupported", 1);
    expect(await workbook.reenter("Sheet1", CELLS)).toEqual({ entered: ALL, changed: [] });
  });

  test("leaves a cell alone that holds something else by now", async () => {
    host.type("Sheet1", "B2", 84.3);
    expect(await workbook.reenter("Sheet1", CELLS)).toEqual({ entered: ["B1", "B3"], changed: ["B2"] });
    expect(held("B2")).toBe("84.3");
  });

  test("puts back what came into a cell after the look", async () => {
    host.startCounting((requests) => {
      if (requests === 1) host.type("Sheet1", "B2", 84.3);
    });
    expect(await workbook.reenter("Sheet1", CELLS)).toEqual({ entered: ["B1", "B3"], changed: ["B2"] });
    expect(held("B2")).toBe("84.3");
  });

  test("refuses a protected sheet before anything is entered", async () => {
    host.book.sheet("Sheet1").isProtected = true;
    await expect(workbook.reenter("Sheet1", CELLS)).rejects.toThrow(workbookProtected);
    expect(CELLS.filter(holdsFormula)).toEqual([]);
  });

  test("says that the rest can be entered by another press where Excel broke off", async () => {
    host.failNext("ServiceNotAvailable", 1);
    await expect(workbook.reenter("Sheet1", CELLS)).rejects.toThrow(
      reentryBrokeOff("The workbook is busy with something else. Wait a moment and try again.", 0),
    );
  });

  test("takes thousands of cells in requests that fit", async () => {
    const many = Array.from({ length: 1500 }, (_, index) => {
      const cell = `E${index + 1}`;
      const broken = `=_xldudf_RETORT_MOLARMASS(A${index + 1})`;
      host.book.sheet("Sheet1").write(index, 4, broken);
      return { cell, held: broken, formula: `=RETORT.MOLARMASS(A${index + 1})` };
    });
    Object.assign(host.longest, { request: 0, answer: 0 });
    expect((await workbook.reenter("Sheet1", many)).entered).toHaveLength(1500);
    expect(host.longest.request).toBeLessThan(4_000_000);
  });
});

describe("whatever fails, and whoever types meanwhile", () => {
  const requests = 2;

  const outcome = (): Promise<Reentered | Error> => workbook.reenter("Sheet1", CELLS).catch((problem: Error) => problem);

  test.each(Array.from({ length: requests }, (_, after) => [after]))(
    "at request %d: no other cell changes, each cell holds what it held or its formula, and none is called entered that is not",
    async (after) => {
      for (const fault of everyFault(after === 0 ? 0 : 30, after)) {
        host.newBook();
        for (const [cell, content] of OTHERS) host.type("Sheet1", cell, content);
        for (const { cell, held: broken } of CELLS) host.type("Sheet1", cell, broken);
        const before = new Map(CELLS.map(({ cell }) => [cell, held(cell)]));
        const others = othersHeld();
        host.startCounting(() => undefined);
        host.faults.plan(fault);
        const ended = await outcome();
        host.faults.none();
        expect(othersHeld()).toEqual(others);
        expect(CELLS.filter((one) => !holdsFormula(one) && held(one.cell) !== before.get(one.cell))).toEqual([]);
        if (!(ended instanceof Error)) expect(CELLS.filter(({ cell }) => ended.entered.includes(cell)).every(holdsFormula)).toBe(true);
        // A second press finishes it, whatever was done.
        const left = CELLS.map((one) => (holdsFormula(one) ? { ...one, held: one.formula } : one));
        expect((await workbook.reenter("Sheet1", left)).entered).toEqual(ALL);
      }
    },
  );

  test("what somebody types into a cell before any request stands there afterwards, or is named", async () => {
    for (const at of [0, 1, 2, 3])
      for (const code of [undefined, "ServiceNotAvailable"]) {
        host.newBook();
        for (const { cell, held: broken } of CELLS) host.type("Sheet1", cell, broken);
        let typed = false;
        host.startCounting((count) => {
          if (count !== at) return;
          typed = true;
          host.type("Sheet1", "B2", 84.37);
        });
        if (code !== undefined) host.faults.plan({ code, after: 2, answerLost: false, forGood: false });
        const ended = await outcome();
        host.faults.none();
        if (at <= 1) expect(typed).toBe(true);
        if (typed) expect(held("B2") === "84.37" || (ended instanceof Error && ended.message.includes("84.37"))).toBe(true);
      }
  });
});
