import { IFormulaDependencyGenerator } from "@univerjs/engine-formula";
import type { CellContent } from "../../../../src/workbook/Workbook";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../../workbench/headlessWorkbook";

jest.setTimeout(60_000);

let open: HeadlessWorkbook;
beforeEach(async () => void (open = await openHeadlessWorkbook()));
afterEach(() => open.close());

const typed = async (sheet: string, cell: string, content: CellContent): Promise<void> => {
  await open.type(sheet, cell, content);
  await open.settled();
};
const value = async (sheet: string, cell: string): Promise<CellContent> => (await open.workbook.read(sheet, cell)).rows[0]?.[0]?.value ?? null;

test("two formulas that the engine has one number for are calculated each as itself", async () => {
  // Found by trying: the engine's own hash, h = 65599 h + code over all characters, is the same for both endings, whatever comes before them.
  const long = `=${"SUM(B1:B9)*0+".repeat(4)}`;
  await typed(FIRST_SHEET, "A1", `${long}729960335`);
  await typed(FIRST_SHEET, "A2", `${long}847366514`);
  expect([await value(FIRST_SHEET, "A1"), await value(FIRST_SHEET, "A2")]).toEqual([729960335, 847366514]);
});

test("one text on two sheets reads the cells of each, and goes on doing so as rows come in", async () => {
  const other = await open.workbook.addSheet({ name: "Two", cells: [], columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" });
  for (const [sheet, grams] of [
    [FIRST_SHEET, 1],
    [other, 10],
  ] as const) {
    await typed(sheet, "A3", grams);
    await typed(sheet, "C1", "=SUM(A1:A5)+A3");
    await typed(sheet, "D1", "=SUM(A:A)");
    await typed(sheet, "E1", "=IF(ISFORMULA(C1),ROW(C1),0)+C1");
  }
  expect([await value(FIRST_SHEET, "C1"), await value(other, "C1")]).toEqual([2, 20]);
  open.engine.book.getSheetByName(other)?.insertRowsBefore(1, 2);
  await typed(other, "A5", 30);
  await typed(FIRST_SHEET, "A3", 4);
  const shown = [FIRST_SHEET, other].map((sheet) => Promise.all(["C1", "D1", "E1"].map((cell) => value(sheet, cell))));
  expect(await Promise.all(shown)).toEqual([
    [8, 4, 9],
    [60, 30, 61],
  ]);
});

test("what a formula reads is worked out once, until the formula is another one", async () => {
  const generator = open.engine.injector.get(IFormulaDependencyGenerator) as unknown as { _executeNode(node: unknown): Promise<unknown> };
  const original = generator._executeNode.bind(generator);
  let asked = 0;
  generator._executeNode = (node) => {
    asked++;
    return original(node);
  };
  await typed(FIRST_SHEET, "B1", "=SUM(A1:A3)*A4");
  expect(asked).toBe(2);
  for (const grams of [1, 2, 3]) await typed(FIRST_SHEET, "A1", grams);
  expect(asked).toBe(2);
  await typed(FIRST_SHEET, "B1", "=SUM(A1:A3)*A5");
  expect(asked).toBe(4);
});
