import type { WorkbenchWindow } from "../../src/workbench/WorkbenchWindow";
import { copyKeepsNames, filledNotChanged } from "../../src/problems/workbook/entryProblems";
import { packageOf } from "../workbench/xlsx/packageOf";
import { LocalWorkbook } from "./localWorkbook";

jest.setTimeout(120_000);

let local: LocalWorkbook;
beforeEach(async () => {
  local = await LocalWorkbook.open();
  await local.page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  const KILN = '<row r="1"><c r="A1"><v>5</v></c></row><row r="2"><c r="A2"><v>3</v></c></row><row r="3"><c r="A3"><v>4</v></c></row>';
  const buffer = Buffer.from(packageOf({ sheets: { Kiln: KILN } }));
  await local.page.locator("#file").setInputFiles({ name: "kiln.xlsx", mimeType: "application/octet-stream", buffer });
  await local.page.locator("#notice").getByText("Opened kiln.xlsx.").waitFor();
  await local.page.evaluate(() => (window as WorkbenchWindow).retortWorkbench?.engine.book.insertDefinedName("moist", "Kiln!$A$1"));
  await local.type("B1", "=moist*2");
  await local.type("D1", "=A1:A3*10");
});
afterEach(() => local?.close());

const shown = async (...cells: string[]): Promise<unknown[]> => {
  await local.settled();
  const found = [];
  for (const cell of cells) found.push((await local.read(cell)).value);
  return found;
};
const said = (sentence: string): Promise<void> => local.page.locator("#notice").getByText(sentence).waitFor();

/** By the keyboard, as somebody does it. */
async function carry(keys: "Control+c" | "Control+x", from: string, to: string): Promise<void> {
  await local.goTo(from);
  await local.page.keyboard.press(keys);
  await local.page.waitForFunction(async () => (await navigator.clipboard.readText()) !== "");
  await local.goTo(to);
  await local.page.keyboard.press("Control+v");
  // The engine pastes in a task of its own.
  await local.page.waitForTimeout(300);
  await local.settled();
}

test("a name goes with the cell that is cut and pasted, and back with it", async () => {
  expect(await shown("B1")).toEqual([10]);
  await carry("Control+x", "A1", "H3");
  expect(await shown("A1", "H3", "B1")).toEqual([null, 5, 10]);
  await local.type("H3", "7");
  expect(await shown("B1")).toEqual([14]);
  await local.page.keyboard.press("Control+z");
  await local.page.keyboard.press("Control+z");
  expect(await shown("A1", "H3", "B1")).toEqual([5, null, 10]);
});

test("a sheet that a name stands for is renamed: the next entry is calculated as ever", async () => {
  await local.type("C1", "=A1+1");
  await local.page.evaluate(() => (window as WorkbenchWindow).retortWorkbench?.engine.book.getActiveSheet().setName("Oven 2"));
  await local.settled();
  await local.type("A1", "6");
  expect(await shown("B1", "C1", "D1", "D3")).toEqual([12, 7, 60, 40]);
});

test.each<["Control+c" | "Control+x", string, string]>([
  ["Control+c", "A2", "D2"],
  ["Control+x", "A2", "D2"],
  ["Control+x", "D2", "H2"],
])("%s at %s and a paste at %s are refused where a formula fills cells", async (keys, from, to) => {
  await carry(keys, from, to);
  await said(filledNotChanged("D2", "D1", "D1:D3"));
  expect(await shown("A2", "D1", "D2", "D3", "H2")).toEqual([3, 50, 30, 40, null]);
});

test("what is pasted beside it or over its formula goes in", async () => {
  await carry("Control+c", "A2", "F1");
  await carry("Control+c", "B1", "D1");
  expect(await shown("F1", "D1", "D2", "D3")).toEqual([3, 10, null, null]);
  expect(local.complaints).toEqual([]);
});

test("a copied sheet says which names go on standing for cells of the first", async () => {
  await local.page.evaluate(() => (window as WorkbenchWindow).retortWorkbench?.engine.book.duplicateActiveSheet());
  await said(copyKeepsNames("Kiln (Copy)", "Kiln", ["moist"]));
});
