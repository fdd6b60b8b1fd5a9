import { copyKeepsNames } from "../../../src/problems/workbook/entryProblems";
import { replaceNames } from "../../../src/workbook/grid/writing/definedNames";
import { tellCopiedNames } from "../../../src/workbench/grid/tellCopiedNames";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../headlessWorkbook";

jest.setTimeout(60_000);

let open: HeadlessWorkbook;
let said: string[];
beforeEach(async () => {
  open = await openHeadlessWorkbook();
  said = [];
  replaceNames(open.engine, [
    { name: "Moist", refersTo: "Sheet1!$B$1" },
    { name: "dry", refersTo: "Sheet1!$B$2" },
    { name: "unused", refersTo: "Sheet1!$B$3" },
    { name: "lost", refersTo: "moist-dry" },
    { name: "rate", refersTo: "1.5" },
  ]);
  await open.type(FIRST_SHEET, "B1", 75);
  await open.type(FIRST_SHEET, "B2", 61);
  tellCopiedNames(open.engine, (sentence) => void said.push(sentence));
});
afterEach(() => open.close());

// Without the page's words the engine calls every copy the same.
const COPY = "Sheet1 sheets.tabs.sheetCopy";

const copied = async (): Promise<string> => {
  await open.settled();
  open.engine.book.setActiveSheet(open.engine.book.getSheetByName(FIRST_SHEET) ?? "");
  open.engine.book.duplicateActiveSheet();
  await open.settled();
  return open.engine.book.getSheets()[1]?.getSheetName() ?? "";
};

test("the words name the copy, the original and the names", () => {
  expect(copyKeepsNames("Kiln (Copy)", "Kiln", ["moist", "dry"])).toBe(
    'Formulas on "Kiln (Copy)" go on reading cells of "Kiln" through the names moist, dry: a copied sheet gets no names of its own here. Name the cells themselves in those formulas, such as B2 in place of moist, where the copy\'s own are meant.',
  );
  expect(copyKeepsNames("Kiln (Copy)", "Kiln", ["moist"])).toContain("through the name moist: a");
});

test("names that formulas of a copied sheet use are told, by themselves or through others", async () => {
  await open.type(FIRST_SHEET, "C1", "=moist*2");
  await open.type(FIRST_SHEET, "C2", "=LOST/rate");
  await open.type(FIRST_SHEET, "C3", '="unused"');
  const copy = await copied();
  expect([copy, said]).toEqual([COPY, [copyKeepsNames(copy, FIRST_SHEET, ["Moist", "lost"])]]);
});

test("nothing is told of a sheet whose formulas use none, and of one copied to be handed on", async () => {
  await open.type(FIRST_SHEET, "C1", "=B1-B2+rate");
  await copied();
  open.engine.book.getSheetByName(COPY)?.setName("Copied");
  await open.type(FIRST_SHEET, "C1", "=moist");
  await open.settled();
  const read = await open.workbook.readUsed(FIRST_SHEET);
  const beside = { name: "Record", cells: [], columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" };
  await open.workbook.copyWithValues(FIRST_SHEET, { name: "Values", read, areas: [{ range: "C1", values: [[75]] }], beside });
  expect([open.engine.book.getSheets().length, said]).toEqual([4, []]);
});
