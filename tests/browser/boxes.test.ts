// Typing into the boxes of a run sheet in the local workbook, by keyboard: what a box shows and holds after a slip.
import { LocalWorkbook } from "./localWorkbook";
import { RunSheetOnPage } from "./RunSheetOnPage";

jest.setTimeout(180_000);

let local: LocalWorkbook;
beforeAll(async () => {
  local = await LocalWorkbook.open();
  await RunSheetOnPage.insert(local, "Drying and charring", "2");
});
afterAll(() => local?.close());

test("the first letter typed into a list goes into the cell, and enough of a word stands for it", async () => {
  await local.goTo("B9");
  await local.page.keyboard.type("diff", { delay: 60 });
  await local.page.locator('[data-u-comp="sheets-dropdown-list"]').waitFor();
  expect(await local.page.locator('[data-u-comp="sheets-dropdown-list"] input').count()).toBe(0);
  await local.page.keyboard.press("Enter");
  await local.settled();
  expect((await local.read("B9")).shown).toBe("different");
  await local.type("B9", "repeats");
  expect((await local.read("B9")).shown).toBe("repeats");
});

test("a box keeps its format after a percentage, a date or a time was typed into it", async () => {
  await local.type("C12", "50%");
  expect([(await local.read("C12")).value, (await local.read("C12")).shown]).toEqual([0.5, "0.50"]);
  await local.type("C12", "72.14");
  expect((await local.read("C12")).shown).toBe("72.14");
  await local.type("C11", "9:30");
  expect((await local.read("C11")).shown).toBe("0.40");
  await local.type("C11", "41.86");
  expect((await local.read("C11")).shown).toBe("41.86");
  await local.type("B12", "2026-11-21 9:30");
  await local.type("B12", "9:45");
  expect((await local.read("B12")).shown).toBe("09:45");
});

test("a time keeps all its digits, in a box and beside it", async () => {
  await local.type("B13", "0:00:13");
  expect((await local.read("B13")).value).toBe(13 / 86_400);
  await local.type("P40", "10:10:07");
  expect((await local.read("P40")).value).toBe(36_607 / 86_400);
});
