import { readFileSync } from "node:fs";
import path from "node:path";
import axe from "axe-core";
import type { Page } from "playwright-core";
import { LocalWorkbook } from "./localWorkbook";
import { focused } from "./seenOnPage";

jest.setTimeout(60_000);

const FILES = path.join(__dirname, "../workbench/xlsx/files");

let local: LocalWorkbook;
beforeAll(async () => {
  local = await LocalWorkbook.open();
});
afterAll(() => local?.close());

const offer = (page: Page) => page.getByRole("status", { name: "Copy that was not saved" });
const ready = (page: Page) => page.waitForSelector("body[data-ready]");
const openCopy = async (): Promise<void> => {
  await offer(local.page).getByRole("button", { name: "Open the copy" }).click();
  await local.page.getByText(/^Opened the copy from .*\. Save it as a file to keep it\.$/).waitFor();
};
const keptNow = () => local.page.getByText(/^Not saved as a file yet\. A copy from \d\d:\d\d is kept in this browser\.$/).waitFor();

/** Reloads as a person who agrees to leave; how often the page asked. Each takes seconds, so that one serves as many promises as it can. */
async function reload(page: Page): Promise<number> {
  let asked = 0;
  const agree = (dialog: { type(): string; accept(): Promise<void> }): void => {
    if (dialog.type() === "beforeunload") asked++;
    void dialog.accept();
  };
  page.on("dialog", agree);
  await page.reload({ waitUntil: "commit" });
  await ready(page);
  page.off("dialog", agree);
  return asked;
}

test("what a file has that is not shown is listed, and its merged cells hold their value once", async () => {
  const give = (name: string) =>
    local.page.locator("#file").setInputFiles({ name, mimeType: "application/octet-stream", buffer: readFileSync(path.join(FILES, name)) });
  await give("beside.xlsx");
  await local.page
    .getByText("Opened beside.xlsx. Not all that is in it can be shown here. What is not shown stays in it when it is saved from here.")
    .waitFor();
  const items = local.page.locator("#not-shown li");
  expect(await items.count()).toBe(12);
  expect(await items.nth(2).isVisible()).toBe(true);
  expect(await items.nth(2).textContent()).toBe("2 charts (Kiln runs): kept on saving");
  await local.page.evaluate(axe.source);
  const { violations } = await local.page.evaluate(() => (window as unknown as { axe: typeof axe }).axe.run({ exclude: ["#grid", "#pane"] }));
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  await local.picture("not-shown");
  await give("openpyxl.xlsx");
  await local.page.getByText("Opened openpyxl.xlsx.").waitFor();
  expect(await items.count()).toBe(0);
  expect((await local.read("F8")).value).toBe(25);
  await local.picture("merged");
  // One byte of the packed cells is another: found by the browser's own unpacking, and nothing is complained of besides.
  const damaged = readFileSync(path.join(FILES, "openpyxl.xlsx"));
  const packed = damaged.indexOf("xl/worksheets/sheet1.xml") + 100;
  damaged.writeUInt8(damaged.readUInt8(packed) ^ 4, packed);
  await local.page.locator("#file").setInputFiles({ name: "damaged.xlsx", mimeType: "application/octet-stream", buffer: damaged });
  await local.page.getByText('This file is damaged, so nothing was changed: its part "xl/worksheets/sheet1.xml" cannot be read').waitFor();
  expect([(await local.read("F8")).value, local.complaints]).toEqual([25, []]);
  // Its names go when the next file comes.
  await give("days1904.xlsx");
  await local.page.getByText("Opened days1904.xlsx.").waitFor();
  expect((await local.read("B1")).value).toBe(2026);
});

test("a page on which nothing was typed is left without a question, and nothing is offered", async () => {
  await local.goTo("J3");
  expect(await reload(local.page)).toBe(0);
  expect([await local.page.locator("#kept").textContent(), await offer(local.page).isVisible()]).toEqual(["", false]);
});

test("a change is kept in the browser, leaving the page asks, and the copy is offered after it and opened only when asked for", async () => {
  await local.type("J3", "typed and not saved");
  await keptNow();
  await local.picture("unsaved");
  expect(await reload(local.page)).toBe(1);
  await offer(local.page).waitFor();
  await local.picture("copy-offered");
  expect(await offer(local.page).textContent()).toMatch(
    /^A copy of sheets that were not saved as a file was kept in this browser on \d+ \w+ \d{4} at \d\d:\d\d: "Orchard kiln" and 2 more sheets\. Opening it puts them in place of the sheets shown now\./,
  );
  expect((await local.read("J3")).value).toBeNull();
  // Still there after another visit that leaves it alone.
  await offer(local.page).getByRole("button", { name: "Not now" }).click();
  await reload(local.page);
  await openCopy();
  expect([(await local.read("J3")).value, (await local.read("B24")).shown]).toEqual(["typed and not saved", "13.6%"]);
  await keptNow();
});

test("another window has a copy of its own, and is offered none that belongs to a window still open", async () => {
  const other = await local.another();
  expect(await offer(other).isVisible()).toBe(false);
  await other.close();
  await local.type("J4", "typed later");
  await local.page.waitForTimeout(1200);
  await reload(local.page);
  await openCopy();
  expect((await local.read("J4")).value).toBe("typed later");
});

test("a copy is removed for good only when that is said twice, and saving as a file ends it", async () => {
  await keptNow();
  await reload(local.page);
  await offer(local.page).getByRole("button", { name: "Throw the copy away" }).click();
  await offer(local.page)
    .getByText(/cannot be brought back once it is removed/)
    .waitFor();
  expect(await local.page.evaluate(focused)).toBe("Keep the copy");
  await offer(local.page).getByRole("button", { name: "Keep the copy" }).click();
  await offer(local.page).getByRole("button", { name: "Throw the copy away" }).click();
  await offer(local.page).getByRole("button", { name: "Remove it for good" }).click();
  await local.page.waitForFunction(() => document.activeElement?.matches('[data-u-comp="editor"]'));
  await local.type("J3", "to be saved");
  await keptNow();
  await Promise.all([local.page.waitForEvent("download"), local.page.getByRole("button", { name: "Save .xlsx" }).click()]);
  await local.page.waitForFunction(() => document.querySelector("#kept")?.textContent === "");
  // Neither the copy that was removed nor the one that was saved.
  expect(await reload(local.page)).toBe(0);
  expect(await offer(local.page).isVisible()).toBe(false);
});

test("saving works when the server has gone, and so does opening", async () => {
  await local.page.frameLocator("#pane").getByRole("tab").first().waitFor();
  await local.page.waitForLoadState("networkidle");
  local.stopServing();
  await local.type("J3", "typed without a server");
  const [download] = await Promise.all([local.page.waitForEvent("download"), local.page.getByRole("button", { name: "Save .xlsx" }).click()]);
  expect(readFileSync(await download.path()).length).toBeGreaterThan(5000);
  await local.page.locator("#file").setInputFiles({
    ...{ name: "openpyxl.xlsx", mimeType: "application/octet-stream" },
    buffer: readFileSync(path.join(FILES, "openpyxl.xlsx")),
  });
  await local.page.getByText("Opened openpyxl.xlsx.").waitFor();
  expect(local.complaints).toEqual([]);
});

test("storage that is full is said, with what to do", async () => {
  await local.page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await local.type("J3", "no room for this");
  await local.page.getByText("No copy could be kept: this browser's storage is full. Save the workbook as a file.").waitFor();
});
