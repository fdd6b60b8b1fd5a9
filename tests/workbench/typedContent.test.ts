import { typedContent } from "../../src/workbench/typedContent";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "./headlessWorkbook";

let open: HeadlessWorkbook;
beforeEach(async () => {
  open = await openHeadlessWorkbook();
});
afterEach(() => open.close());

const type = async (cell: string, content: string | number): Promise<void> => {
  await open.type(FIRST_SHEET, cell, content);
  await open.settled();
};

describe("typedContent(engine)", () => {
  test.each<[string, () => Promise<unknown>]>([
    ["a number", () => type("A1", 26)],
    ["a text", () => type("C1", "shells")],
    ["a cell formula", () => type("B1", "=A1*3")],
    ["the clearing of a cell", () => type("A1", "")],
    ["a sheet", async () => open.engine.book.duplicateSheet(open.engine.book.getActiveSheet())],
  ])("changes with %s", async (_what, change) => {
    await type("A1", 25);
    await type("B1", "=A1*2");
    const before = typedContent(open.engine);
    await change();
    expect(typedContent(open.engine)).not.toBe(before);
  });

  test("stays through a calculation, and comes back with what was typed back", async () => {
    await type("A1", 25);
    await type("B1", "=RAND()");
    const before = typedContent(open.engine);
    open.engine.api.getFormula().executeCalculation();
    await open.settled();
    expect(typedContent(open.engine)).toBe(before);
    await type("A1", 26);
    await type("A1", 25);
    expect(typedContent(open.engine)).toBe(before);
  });
});
