import { readFileSync } from "node:fs";
import path from "node:path";
import { rowsMoved } from "../../../src/problems/files/packageProblems";
import { openCopy, type CopyOfFile } from "../../../src/workbench/xlsx/openCopy";
import type { OpenedFile } from "../../../src/workbench/xlsx/inPlace/OpenedFile";
import { openFile } from "../../../src/workbench/xlsx/openXlsx";
import { namesIn } from "../../../src/workbook/grid/writing/definedNames";
import { heldSheets } from "../../../src/workbook/grid/reading/heldSheets";
import { oddBook } from "../../sharing/odd/oddBook";
import { partsDiffering } from "../../xlsx/package/partsIn";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../headlessWorkbook";

jest.setTimeout(60_000);

const fileNamed = (name: string): Uint8Array<ArrayBuffer> => new Uint8Array(readFileSync(path.join(__dirname, "files", name)));

/** The window in which the file was opened, and the one in which its copy is. */
let [first, later]: [HeadlessWorkbook?, HeadlessWorkbook?] = [];
beforeEach(async () => void ([first, later] = [await openHeadlessWorkbook(), await openHeadlessWorkbook()]));
afterEach(() => [first, later].forEach((one) => one?.close()));

interface Both {
  readonly before: OpenedFile;
  readonly after: OpenedFile;
  readonly said: readonly (readonly string[])[];
}

/** Opens a file, changes it and opens it again in another window from what a browser would have kept of it. */
async function bothOf(content: Uint8Array<ArrayBuffer>, change: (open: HeadlessWorkbook, sheet: string) => Promise<void>): Promise<Both> {
  if (first === undefined || later === undefined) throw new Error("no windows");
  const opened = await openFile(first.engine, content);
  await change(first, (await first.workbook.sheetNames())[0] ?? "");
  await first.settled();
  const copy: CopyOfFile = { sheets: heldSheets(first.engine), names: namesIn(first.engine), origins: opened.opened.origins() };
  const again = await openCopy(later.engine, structuredClone(content), structuredClone(copy));
  return { before: opened.opened, after: again.opened, said: [opened.said, again.said] };
}

async function savedBy(file: OpenedFile): Promise<Uint8Array<ArrayBuffer>> {
  const saved = await file.saved();
  if ("because" in saved) throw new Error(saved.because);
  return saved.content;
}

const NOTHING = { changed: [], added: [], gone: [] };

describe.each(["openpyxl.xlsx", "libreoffice.xlsx", "gnumeric.xlsx", "beside.xlsx", "days1904.xlsx"])("a copy of %s", (name) => {
  test("in which nothing was changed is the file itself", async () => {
    const { after, said } = await bothOf(fileNamed(name), async () => undefined);
    expect(said[1]).toEqual(said[0]);
    expect(await partsDiffering(fileNamed(name), await savedBy(after))).toEqual(NOTHING);
  });

  test("with what was typed is saved as it would have been before", async () => {
    const { before, after } = await bothOf(fileNamed(name), async ({ type, engine }, sheet) => {
      await type(sheet, "X40", 12.5);
      await type(sheet, "X41", "'008");
      await type(sheet, "Y40", "=X40:X42&1");
      engine.book.getSheetByName(sheet)?.getRange("X41").setFontWeight("bold");
      engine.book.getSheetByName(sheet)?.setColumnWidth(2, 222);
    });
    const bytes = await savedBy(after);
    expect((await partsDiffering(fileNamed(name), bytes)).changed.some((part) => part.startsWith("xl/worksheets/"))).toBe(true);
    expect(await partsDiffering(await savedBy(before), bytes)).toEqual(NOTHING);
  });
});

test("a copy with sheets taken out, renamed and added is saved as it would have been before", async () => {
  const sheets = ["Runs", "After", "Notes"].map((name) => ({ name, cells: { A1: 2, A2: { formula: "Runs!A1*2", value: 4 } } }));
  const { before, after } = await bothOf(new Uint8Array(oddBook({ sheets })), async ({ engine, type }) => {
    engine.book.getSheetByName("Runs")?.setName("Kiln runs");
    const [notes] = [engine.book.getSheetByName("Notes")];
    if (notes) engine.book.deleteSheet(notes);
    engine.book.insertSheet("Further");
    await type("Further", "A1", "='Kiln runs'!A1+1");
  });
  expect(await later?.workbook.sheetNames()).toEqual(["Kiln runs", "After", "Further"]);
  expect(await partsDiffering(await savedBy(before), await savedBy(after))).toEqual(NOTHING);
});

test("a copy in which cells were moved says so as before", async () => {
  const { before, after } = await bothOf(fileNamed("beside.xlsx"), async ({ engine }, sheet) => {
    engine.book.getSheetByName(sheet)?.insertRowsBefore(1, 1);
  });
  const because = { because: rowsMoved((await later?.workbook.sheetNames())?.[0] ?? "") };
  expect([await before.saved(), await after.saved()]).toEqual([because, because]);
});

const KEPT = {
  B1: 0.35,
  B2: 5,
  A1: { formula: "B1+0*[1]Sheet1!A1", value: 0.35 },
  A2: { formula: "[1]Sheet1!A1*2", value: 7 },
  A3: { formula: 'INDIRECT("[1]Sheet1!A"&ROW(B1))', value: 9 },
};

test.each([
  ["B9, which none of them reads", "B9", []],
  ["B1, which one of them reads", "B1", ["Sum!A1"]],
  ["A1, which is one of them", "A1", []],
] as const)("formulas that are not calculated here are known again after something was typed into %s", async (_what, cell, fromBefore) => {
  const file = new Uint8Array(oddBook({ sheets: [{ name: "Sum", cells: KEPT }] }));
  const { before, after } = await bothOf(file, ({ type }) => type("Sum", cell, 0.5));
  const ofSeen = (names: readonly string[] = []): readonly string[] => names.filter((name) => name !== "Sum!A3");
  expect([before, after].map(({ kept }) => ofSeen(kept?.fromBefore()))).toEqual([fromBefore, fromBefore]);
  expect(after.kept?.fromBefore()).toEqual(before.kept?.fromBefore());
  expect(await partsDiffering(await savedBy(before), await savedBy(after))).toEqual(NOTHING);
});

test("a copy in which nothing was changed has nothing from before, not even where a formula does not show what it reads", async () => {
  const { after } = await bothOf(new Uint8Array(oddBook({ sheets: [{ name: "Sum", cells: KEPT }] })), async () => undefined);
  expect(after.kept?.fromBefore()).toEqual([]);
  expect(await later?.workbook.sheetNames()).not.toContain(FIRST_SHEET);
});
