import { sharingStopped } from "../../src/problems/sharing/sharedCopyWords";
import { shareAsPlainCells } from "../../src/sharing/shareAsPlainCells";
import { shareAsValues } from "../../src/sharing/shareAsValues";
import { shareInFile } from "../../src/sharing/shareInFile";
import { saveXlsx } from "../../src/workbench/xlsx/saveXlsx";
import type { PlannedCell } from "../../src/workbook/SheetPlan";
import { plainFile } from "../../src/xlsx/handedOn/plainFile";
import { valuesFile } from "../../src/xlsx/handedOn/valuesFile";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../workbench/headlessWorkbook";

jest.setTimeout(120_000);

const DATE = "2027-01-15";
const SHEET = "Kiln";
const MANY = 10_000;
const FEW = 8;
const SHARED_BY = { values: shareAsValues, plain: shareAsPlainCells };

function cellsOf(calls: number): PlannedCell[] {
  return Array.from({ length: calls }, (_, index): PlannedCell[] => {
    const row = index + 1;
    const weighed = [25, 35, 31.5].map((content, column): PlannedCell => ({ cell: `${"ABC".charAt(column)}${row}`, content }));
    return [...weighed, { cell: `D${row}`, formula: `=RETORT.MOISTURE.WET(A${row},B${row},C${row})` }];
  }).flat();
}

async function local(calls: number): Promise<HeadlessWorkbook> {
  const open = await openHeadlessWorkbook();
  await open.workbook.addSheet({ name: SHEET, cells: cellsOf(calls), columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" });
  await open.settled();
  return open;
}

/** Stop pressed while a step is shown: a press is an event of its own, and is heard only where the work lets the page have its turn. */
function pressedAt(step: string) {
  let isStopped = false;
  const told = (shown: string): void => void (shown === step && setTimeout(() => (isStopped = true), 0));
  return { told, isStopped: () => isStopped };
}

describe("Stop pressed while 10,000 cells are shared in the local workbook", () => {
  let open: HeadlessWorkbook;
  beforeAll(async () => (open = await local(MANY)));
  afterAll(() => open.close());

  test.each([
    ["while the sheet is read", "Reading Kiln (1 of 1)", "values"],
    ["while the file is written", "Writing the file", "values"],
    ["while the file is written", "Writing the file", "plain"],
  ] as const)("%s (%s), into a file as %s: nothing is made", async (_, step, as) => {
    const before = await open.workbook.sheetNames();
    const pressed = pressedAt(step);
    const handedOut: string[] = [];
    const make = as === "values" ? valuesFile : plainFile;
    const files = {
      make: async (wanted: Parameters<typeof make>[1]) => ({ ...(await make(await saveXlsx(open.engine), wanted)), fileName: "Kiln.xlsx" }),
      handOut: async ({ fileName }: { fileName: string }) => (handedOut.push(fileName), ""),
    };
    await expect(shareInFile(open.workbook, files, { as, sheets: [SHEET], date: DATE, ...pressed })).rejects.toThrow(sharingStopped);
    expect([handedOut, await open.workbook.sheetNames()]).toEqual([[], before]);
  });

  test.each(["values", "plain"] as const)("as the copy is begun, into the workbook as %s: nothing is made", async (as) => {
    const before = await open.workbook.sheetNames();
    await expect(SHARED_BY[as](open.workbook, SHEET, DATE, pressedAt("Making the copy and its record"))).rejects.toThrow(sharingStopped);
    expect(await open.workbook.sheetNames()).toEqual(before);
  });
});

test("Stop pressed while a copy of plain cells calculates takes it back, and the sheet goes on calculating", async () => {
  const open = await local(5_000);
  const before = await open.workbook.sheetNames();
  // The copy has its name once its formulas are in.
  const isStopped = (): boolean => open.engine.isCalculating() && open.engine.book.getSheetByName(`${SHEET} plain cells`) !== null;
  await expect(shareAsPlainCells(open.workbook, SHEET, DATE, { isStopped })).rejects.toThrow(sharingStopped);
  await open.type(SHEET, "A1", 26);
  await open.settled();
  expect(await open.workbook.sheetNames()).toEqual(before);
  // (35 - 31.5) / (35 - 26)
  expect((await open.workbook.read(SHEET, "D1")).rows[0]?.[0]?.value).toBeCloseTo(3.5 / 9, 12);
  open.close();
});

/** Stops at the look after so many; tells whether there was such a look. */
function stopAfter(looks: number) {
  let asked = 0;
  return { isStopped: () => asked++ >= looks, wasAsked: () => asked > looks };
}

describe.each(["values", "plain"] as const)("Stop at whichever step of a copy as %s", (as) => {
  test("takes back what was made of it in the local workbook", async () => {
    const open = await local(FEW);
    const before = await open.workbook.sheetNames();
    let stops = 0;
    for (let stop = stopAfter(0); ; stop = stopAfter(++stops)) {
      const shared = SHARED_BY[as](open.workbook, SHEET, DATE, stop);
      const outcome = await shared.then(() => "made", (problem: Error) => problem.message); // prettier-ignore
      if (!stop.wasAsked()) break;
      expect([stops, outcome, await open.workbook.sheetNames()]).toEqual([stops, sharingStopped, before]);
    }
    expect([stops > 3, (await open.workbook.sheetNames()).length > before.length]).toEqual([true, true]);
    open.close();
  });
});

test("a calculation that was stopped leaves nothing that keeps Node from ending", async () => {
  const ports = (): number => process.getActiveResourcesInfo().filter((kind) => kind === "MessagePort").length;
  const before = ports();
  const open = await local(1_200);
  const isStopped = (): boolean => open.engine.isCalculating() && open.engine.book.getSheetByName(`${SHEET} plain cells`) !== null;
  await expect(shareAsPlainCells(open.workbook, SHEET, DATE, { isStopped })).rejects.toThrow(sharingStopped);
  await open.settled();
  open.close();
  // Ports are let go in a turn of their own.
  await new Promise((resolve) => setTimeout(resolve, 100));
  expect(ports()).toBe(before);
});
