import { nameJustTaken } from "../../../../src/problems/workbook/workbookProblems";
import type { SheetPlan } from "../../../../src/workbook/SheetPlan";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../../workbench/headlessWorkbook";

jest.setTimeout(30_000);

let open: HeadlessWorkbook;
beforeAll(async () => {
  open = await openHeadlessWorkbook();
});
afterAll(() => open.close());

const beside: SheetPlan = { name: "Record", cells: [], columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" };

test("a copy whose name somebody takes meanwhile is taken away again, and the other's sheet stays", async () => {
  await open.type(FIRST_SHEET, "A1", 25);
  await open.settled();
  const read = await open.workbook.readUsed(FIRST_SHEET);
  const copying = open.workbook.copyWithValues(FIRST_SHEET, { name: "Copy", read, areas: [], beside });
  setTimeout(() => open.engine.book.insertSheet("Copy"), 0);
  await expect(copying).rejects.toThrow(nameJustTaken);
  await open.settled();
  expect(await open.workbook.sheetNames()).toEqual([FIRST_SHEET, "Copy"]);
  expect((await open.workbook.readUsed("Copy")).rows).toEqual([]);
});

test("a copy has no rules for entries and no boxes to fill in; the sheet it came from keeps both", async () => {
  const plan: SheetPlan = {
    ...{ name: "Boxes", columnWidths: [], frozenRows: 0, startAt: "A1" },
    cells: [
      { cell: "A1", content: 25, style: "input", format: "0.00" },
      { cell: "A2", style: "runBox" },
      { cell: "B1", formula: "=A1*2", style: "result" },
    ],
    entryRules: [
      { range: "A1:A2", allow: { kind: "number", atLeast: 0, atMost: 500 }, promptTitle: "Grams", prompt: "With the vessel.", refusal: "A mass." },
    ],
  };
  const sheet = await open.workbook.addSheet(plan);
  const read = await open.workbook.readUsed(sheet);
  const areas = [{ range: "B1", values: [[50]] }];
  await open.workbook.copyWithValues(sheet, { name: "Boxes values", read, areas, beside: { ...beside, name: "Boxes record" } });
  const looks = (name: string) => {
    const found = open.engine.book.getSheetByName(name);
    const fills = ["A1", "A2", "B1"].map((cell) => found?.getRange(cell).getBackground()?.toUpperCase());
    return { fills, rules: found?.getDataValidations().length };
  };
  expect(looks(sheet)).toEqual({ fills: ["#FFF8DC", "#FFF8DC", "#EDF3EE"], rules: 1 });
  expect(looks("Boxes values")).toEqual({ fills: [expect.not.stringMatching("#FFF8DC"), expect.not.stringMatching("#FFF8DC"), "#EDF3EE"], rules: 0 });
  expect((await open.workbook.read("Boxes values", "A1:B1")).rows[0]?.map(({ value, shown }) => [value, shown])).toEqual([
    [25, "25.00"],
    [50, "50"],
  ]);
});
