import {
  cellBeingEdited,
  hostBusy,
  hostRefused,
  nameJustTaken,
  noSuchSheet,
  olderThanNeeded,
  tooMuchAtOnce,
  workbookProtected,
} from "../../../src/problems/workbook/workbookProblems";
import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import { WorkbookProblem } from "../../../src/workbook/Workbook";
import { ExcelHost } from "../../host/ExcelHost";
import { loadClientLibrary } from "../../host/loadClientLibrary";

const host = new ExcelHost();
loadClientLibrary(host);
beforeEach(() => host.newBook());
const workbook = new ExcelWorkbook();

describe("an error of Excel becomes a WorkbookProblem:", () => {
  test.each([
    ["InvalidOperationInCellEditMode", cellBeingEdited],
    ["AccessDenied", workbookProtected],
    ["ItemAlreadyExists", nameJustTaken],
    ["RequestPayloadSizeLimitExceeded", tooMuchAtOnce],
    ["ResponsePayloadSizeLimitExceeded", tooMuchAtOnce],
    ["ActivityLimitReached", hostBusy],
    ["UnsupportedOperation", olderThanNeeded("Excel")],
    ["ItemNotFound", noSuchSheet("Sheet1")],
    ["GeneralException", hostRefused("Excel", "GeneralException")],
  ])("%s says %s", async (code, sentence) => {
    host.failNext(code);
    const problem = await workbook.read("Sheet1", "A1").catch((thrown: unknown) => thrown);
    expect(problem).toBeInstanceOf(WorkbookProblem);
    expect((problem as Error).message).toBe(sentence);
  });

  test("with several workbooks open, the sentence says to click into this one", async () => {
    host.failNext("GeneralException");
    await expect(workbook.select({ sheet: "Sheet1", cell: "A1" })).rejects.toThrow(
      "Excel could not do this (GeneralException). With several workbooks open, click into a cell of this one first, then try again.",
    );
  });

  test("an error of our own passes unchanged", async () => {
    const mine = new RangeError("mine");
    await expect(workbook.onSelection(() => undefined).then(() => Promise.reject(mine))).rejects.toBe(mine);
  });
});

describe("while a cell is being edited", () => {
  test("a call waits until the edit ends", async () => {
    host.startEditing();
    let names: readonly string[] | undefined;
    const asked = workbook.sheetNames().then((answer) => (names = answer));
    await host.quiet();
    expect(names).toBeUndefined();
    host.stopEditing();
    await asked;
    expect(names).toEqual(["Sheet1"]);
  });
});

describe("the in-memory host", () => {
  test("refuses what is not modelled instead of letting it pass", async () => {
    const coloured = Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").tabColor = "#33443B";
      await context.sync();
    });
    await expect(coloured).rejects.toMatchObject({ code: "NotModelled", message: "in-memory host: Worksheet.TabColor (writes) is not modelled" });
  });

  test("refuses a load that names no property", async () => {
    const everything = Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("A1").load();
      await context.sync();
    });
    await expect(everything).rejects.toMatchObject({ code: "NotModelled" });
  });

  test("leaves the rules of load and sync to the client library", async () => {
    const unread = Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1").load("values");
      return Promise.resolve(range.values);
    });
    await expect(unread).rejects.toMatchObject({ code: "PropertyNotLoaded" });
  });
});
