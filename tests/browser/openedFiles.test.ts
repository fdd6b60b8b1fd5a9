import { readFileSync } from "node:fs";
import path from "node:path";
import type { Page } from "playwright-core";
import type { WorkbenchWindow } from "../../src/workbench/WorkbenchWindow";
import { packageOf } from "../workbench/xlsx/packageOf";
import { partsDiffering, textOf } from "../xlsx/package/partsIn";
import { LocalWorkbook } from "./localWorkbook";

jest.setTimeout(120_000);

const fileNamed = (name: string): Buffer => readFileSync(path.join(__dirname, "../workbench/xlsx/files", name));

let local: LocalWorkbook;
beforeAll(async () => {
  local = await LocalWorkbook.open();
  // Leaving a page with unsaved sheets asks first.
  local.page.on("dialog", (dialog) => void dialog.accept());
});
afterAll(() => local?.close());

const give = (name: string, buffer = fileNamed(name)) =>
  local.page.locator("#file").setInputFiles({ name, mimeType: "application/octet-stream", buffer });
const opened = (name: string) => local.page.locator("#notice").getByText(`Opened ${name}.`).waitFor();
const sheets = (page: Page) => page.evaluate(() => (window as WorkbenchWindow).retortWorkbench?.workbook.sheetNames());
const listed = () => local.page.locator("#not-shown li").allTextContents();
const offer = () => local.page.getByRole("status", { name: "Copy that was not saved" });

async function press(keys: string, times: number): Promise<void> {
  for (let again = 0; again < times; again++) {
    await local.page.keyboard.press(keys);
    await local.settled();
  }
}

async function save(): Promise<{ readonly name: string; readonly content: Buffer }> {
  const [download] = await Promise.all([local.page.waitForEvent("download"), local.page.getByRole("button", { name: "Save .xlsx" }).click()]);
  return { name: download.suggestedFilename(), content: readFileSync(await download.path()) };
}

/** Reloads once the browser keeps a copy, and opens that. */
async function openCopy(kept: RegExp): Promise<string | null> {
  await local.page.locator("#kept").getByText(kept).waitFor();
  await local.page.reload({ waitUntil: "commit" });
  await local.page.waitForSelector("body[data-ready]");
  await offer().waitFor();
  const offered = await offer().locator("p").textContent();
  await offer().getByRole("button", { name: "Open the copy" }).click();
  await local.page.locator("#notice").getByText("Opened the copy from").waitFor();
  return offered;
}

test("nothing is taken back that nobody did: not the sheets of the start, of a file or of a copy; a run sheet that was inserted is one step", async () => {
  const start = await sheets(local.page);
  await local.goTo("J3");
  await press("Control+z", 3);
  expect(await sheets(local.page)).toEqual(start);
  await give("openpyxl.xlsx");
  await opened("openpyxl.xlsx");
  const inFile = await sheets(local.page);
  await local.type("X40", "5");
  await press("Control+z", 4);
  expect([await sheets(local.page), (await local.read("X40")).value]).toEqual([inFile, null]);
  expect(await partsDiffering(fileNamed("openpyxl.xlsx"), (await save()).content)).toEqual({ changed: [], added: [], gone: [] });
  await local.type("X40", "7");
  const pane = local.page.frameLocator("#pane");
  await pane.getByRole("button", { name: "Insert blank run sheet" }).click();
  await local.page.waitForFunction((count) => document.querySelectorAll('[data-u-comp="slide-tab-item"]').length > count, inFile?.length ?? 0);
  await local.settled();
  await local.goTo("C3");
  await press("Control+z", 1);
  await local.page.evaluate((sheet) => (window as WorkbenchWindow).retortWorkbench?.workbook.select({ sheet, cell: "X40" }), inFile?.[0] ?? "");
  expect([await sheets(local.page), (await local.read("X40")).value]).toEqual([inFile, 7]);
});

const EVERYTHING = /^Not saved as a file yet\. A copy from \d\d:\d\d is kept in this browser\.$/;

test("opening the copy of an opened file is as if the page had never been reloaded", async () => {
  await give("beside.xlsx");
  await local.page.locator("#unsaved").getByRole("button", { name: "Open without saving" }).click();
  await local.page.getByText("Opened beside.xlsx. Not all that is in it").waitFor();
  const notShown = await listed();
  await local.type("X40", "5");
  const offered = await openCopy(EVERYTHING);
  expect(offered).toContain("They come from beside.xlsx, which was kept with them with everything in it.");
  expect([await listed(), (await local.read("X40")).value]).toEqual([notShown, 5]);
  await local.goTo("X40");
  await press("Control+z", 2);
  expect((await local.read("X40")).value).toBe(5);
  // And once more from this window's own copy.
  await local.type("X41", "6");
  await openCopy(EVERYTHING);
  const { name, content } = await save();
  expect(name).toBe("beside.xlsx");
  const { changed, added, gone } = await partsDiffering(fileNamed("beside.xlsx"), content);
  expect([changed, added, gone]).toEqual([[expect.stringMatching(/worksheets\/sheet\d+\.xml$/)], [], []]);
});

test("where the browser has no room for the file, the copy says before and after what it lacks", async () => {
  const noRoom = (): void => {
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, value: { content?: unknown }, ...others) {
      if (value.content !== undefined) throw new DOMException("full", "QuotaExceededError");
      return put.call(this, value, ...others);
    };
  };
  await local.page.evaluate(noRoom);
  await give("beside.xlsx");
  await local.page.getByText("Opened beside.xlsx. Not all that is in it").waitFor();
  await local.type("X40", "5");
  const offered = await openCopy(/^Not saved as a file yet\. A copy from .* but its storage is full: what beside\.xlsx holds/);
  expect(offered).toContain("They come from beside.xlsx, for which this browser had no room. What the file holds besides is not in the copy: ");
  expect(offered).toContain("2 charts (Kiln runs)");
  expect(await listed()).toContain("2 charts (Kiln runs)");
  await local.page.getByText(/^Opened the copy from .*\. It lacks what beside\.xlsx holds besides, which is listed; /).waitFor();
  expect((await local.read("X40")).value).toBe(5);
  expect((await save()).name).toBe("retort-workbook.xlsx");
});

// Two percentages, a column of texts and one of days, and a formula that fills three cells.
const LINES =
  '<worksheet><cols><col min="2" max="2" style="1"/><col min="3" max="3" style="2"/><col min="4" max="4" style="3"/></cols><sheetData>' +
  '<row r="1"><c r="A1"><v>10</v></c><c r="B1" s="1"><v>0.5</v></c><c r="F1" cm="1"><f t="array" ref="F1:F3">A1:A3*2</f><v>20</v></c></row>' +
  '<row r="2"><c r="A2"><v>3</v></c><c r="B2"><v>0.5</v></c><c r="F2"><v>6</v></c></row>' +
  '<row r="3"><c r="A3"><v>4</v></c><c r="F3"><v>8</v></c></row></sheetData></worksheet>';
const STYLES =
  '<styleSheet><fonts count="1"><font><sz val="11"/></font></fonts><fills count="1"><fill><patternFill patternType="none"/></fill></fills><borders count="1"><border/></borders>' +
  '<cellXfs count="4"><xf/><xf numFmtId="10"><protection locked="0"/></xf><xf numFmtId="49"/><xf numFmtId="14"/></cellXfs></styleSheet>';

test("what is typed has the look of its column, and nothing is typed into a part of what a formula fills", async () => {
  await give("lines.xlsx", Buffer.from(packageOf({ sheets: { Tins: LINES }, further: { "xl/styles.xml": STYLES } })));
  await opened("lines.xlsx");
  for (const [cell, text] of [["B5", "0.25"], ["B6", "25%"], ["C5", "008"], ["D5", "2025-12-10"], ["B2", "0.75"], ["F2", "5"]] as const) await local.type(cell, text); // prettier-ignore
  await local.page.locator("#notice").getByText("Not entered: the formula in F1 fills F1:F3, and no part of that can be changed alone.").waitFor();
  const shown = [];
  for (const cell of ["B5", "B6", "C5", "D5", "B2", "F1", "F2"]) shown.push((await local.read(cell)).shown);
  expect(shown).toEqual(["25.00%", "25.00%", "008", "12-10-25", "0.75", "20", "6"]);
  const markup = await textOf((await save()).content, "xl/worksheets/sheet1.xml");
  expect(markup).toContain('<c r="B5" s="1"><v>0.25</v></c><c r="C5" s="2" t="inlineStr"><is><t>008</t></is></c><c r="D5" s="3"><v>46001</v></c>');
  expect(markup).toContain('<c r="B6" s="1"><v>0.25</v></c>');
  expect(markup).toContain('<c r="B2"><v>0.75</v></c>');
  expect(markup).toContain('<c r="F1" cm="1"><f t="array" ref="F1:F3">A1:A3*2</f><v>20</v></c>');
});

test("a file that is dropped on the page or its pane opens as by the button, after the same question", async () => {
  const drop = async (where: string, names: readonly string[]): Promise<void> => {
    const files = names.map((name) => [name, fileNamed(name).toString("base64")] as const);
    await local.page.evaluate(
      ([target, given]) => {
        const frame = document.querySelector<HTMLIFrameElement>(target);
        const element = frame?.contentDocument?.body ?? document.querySelector(target);
        const data = new DataTransfer();
        for (const [name, content] of given) data.items.add(new File([Uint8Array.from(atob(content), (one) => one.charCodeAt(0))], name));
        const options = { dataTransfer: data, bubbles: true, cancelable: true };
        const isTaken = [new DragEvent("dragover", options), new DragEvent("drop", options)].map((event) => !element?.dispatchEvent(event));
        if (isTaken.includes(false)) throw new Error("the browser would leave the page for the file");
      },
      [where, files] as const,
    );
  };
  await drop("#grid", ["openpyxl.xlsx"]);
  await opened("openpyxl.xlsx");
  await local.type("X40", "typed");
  await drop("#pane", ["days1904.xlsx"]);
  const dialog = local.page.locator("#unsaved");
  await dialog.getByText("Something was typed since the last save. Opening days1904.xlsx puts its sheets").waitFor();
  // A question is answered before another one is asked.
  await drop("#bar", ["beside.xlsx"]);
  await dialog.getByRole("button", { name: "Keep these sheets" }).click();
  await local.page.getByText("days1904.xlsx was not opened; the sheets stay as they are.").waitFor();
  expect((await local.read("X40")).value).toBe("typed");
  await drop("#selected", ["openpyxl.xlsx", "days1904.xlsx"]);
  await local.page.getByText("More than one file was dropped here, and nothing was opened. One workbook is open at a time: drop one file.").waitFor();
  await drop("#bar", ["days1904.xlsx"]);
  await dialog.getByRole("button", { name: "Open without saving" }).click();
  await opened("days1904.xlsx");
  expect(local.complaints).toEqual([]);
});
