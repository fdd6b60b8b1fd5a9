import { readFileSync } from "node:fs";
import axe from "axe-core";
import { Workbook as FileWorkbook } from "exceljs";
import { demoKiln } from "../../src/workbench/demo/orchardKiln";
import { LocalWorkbook } from "./localWorkbook";

jest.setTimeout(60_000);

let local: LocalWorkbook;
beforeAll(async () => {
  local = await LocalWorkbook.open();
});
afterAll(() => local?.close());

const selected = () => local.page.locator("#selected");

test("the page opens on the invented demo with its pane beside it", async () => {
  await local.page.frameLocator("#pane").getByRole("tab").first().waitFor();
  expect(await local.page.locator("h1").textContent()).toBe("Retort local workbook");
  expect(await selected().locator(".address").textContent()).toBe(`${demoKiln.name}, ${demoKiln.startAt}`);
  expect((await local.read("A2")).value).toMatch(/^Invented: /);
  expect((await local.read("B24")).value).toBeCloseTo((262.85 - 255.98) / (262.85 - 212.4), 12);
  await local.picture("opened");
});

test("the demo's drying chart stands in the pane's Run sheet tab on opening", async () => {
  const pane = local.page.frameLocator("#pane");
  await pane.getByRole("tab", { name: "Run sheet" }).click();
  await pane.getByText(`Weighings on sheet "${demoKiln.name}".`).waitFor();
  await pane.locator("figure.chart canvas").waitFor();
  await pane.locator("figure.chart").scrollIntoViewIfNeeded();
  await local.picture("demo-chart");
  await pane.locator("figure.chart details summary").click();
  // Minutes, and grams of shells: 262.85 g and 255.98 g with the tin of 212.4 g.
  const rows = await pane.locator("figure.chart tbody tr").allTextContents();
  expect(rows).toHaveLength(7);
  expect([rows[0], rows[6]]).toEqual([expect.stringMatching(/^0.*50\.45$/), expect.stringMatching(/^120.*43\.58$/)]);
});

test("axe-core finds nothing wrong with the page around the grid", async () => {
  await local.page.evaluate(axe.source);
  // The grid is a canvas with controls of the engine's own; what it shows is told below it.
  const { violations, passes } = await local.page.evaluate(() => (window as unknown as { axe: typeof axe }).axe.run({ exclude: ["#grid", "#pane"] }));
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  expect(passes.length).toBeGreaterThan(10);
});

test("a cell formula typed by keyboard shows its result in the cell and below the grid", async () => {
  await local.type("J3", '=RETORT.MOLARMASS("CaCO3")');
  expect(await local.read("J3")).toMatchObject({ formula: '=RETORT.MOLARMASS("CaCO3")', value: 100.086, error: "" });
  await local.goTo("J3");
  await selected().getByText("100.086", { exact: true }).waitFor();
  expect(await selected().locator(".formula").textContent()).toBe('=RETORT.MOLARMASS("CaCO3")');
});

test("typing the beginning of a function's name offers it with what it does", async () => {
  await local.goTo("J20");
  await local.page.keyboard.type("=RETORT.MOISTURE.W", { delay: 20 });
  await local.page
    .getByText(/Moisture content, wet basis/)
    .first()
    .waitFor();
  await local.picture("name-offered");
  await local.page.keyboard.press("Escape");
  await local.page.keyboard.press("Escape");
});

test("a formula over a column spills, follows its inputs, and shows the error of one row alone", async () => {
  await local.type("J5", "H2O");
  await local.type("J6", "CaXoO3");
  await local.type("J7", "CO2");
  await local.type("K5", "=RETORT.MOLARMASS(J5:J7)");
  expect(await local.read("K5")).toMatchObject({ value: 18.015, spill: "K5:K7" });
  expect(await local.read("K6")).toMatchObject({ value: "#VALUE!", error: "#VALUE!", formula: "" });
  expect(await local.read("K7")).toMatchObject({ value: 44.009, formula: "" });
  await local.type("J7", "CaCO3");
  expect((await local.read("K7")).value).toBe(100.086);
  await local.goTo("K6");
  await selected().getByText('formula: no element "Xo" at character 3 of "CaXoO3". Check the symbol.').waitFor();
  await local.picture("spill");
});

test("an error's sentence stands in the live region below the grid", async () => {
  expect(await selected().getAttribute("aria-live")).toBe("polite");
  await local.goTo("B30");
  await selected().getByText("dry: 262.85 g is more than moist, 255.98 g. Check for swapped cells or regained moisture.").waitFor();
  await local.picture("error");
});

test.each([
  ['=RETORT.MOLARMAS("H2O")', "RETORT.MOLARMAS: there is no such function in this version. Nearest name: RETORT.MOLARMASS."],
  ['=MOLARMASS("H2O")', "MOLARMASS: there is no such function in this version. Nearest name: RETORT.MOLARMASS."],
  ["=KILNS(1)", "A name in this formula is not known here."],
  ["=J12+1", "This formula refers to its own cell, so what the cell shows cannot be right. Point it at other cells."],
  ["=RETORT.MOISTURE.WET(25,35,31,5)", "RETORT.MOISTURE.WET: 4 arguments given; it takes 3 at most."],
  ["=RETORT.MOISTURE.WET(25;35;31.5)", "RETORT.MOISTURE.WET: semicolons stand between the arguments."],
  ["=B24/0", "Something is divided by 0 or by a blank cell."],
])("the mistake in %s is named below the grid", async (typed, said) => {
  await local.type("J12", typed);
  await local.goTo("J12");
  await selected().getByText(said).waitFor();
  await local.type("J12", "0");
});

test("the prompt of a cell to fill in stands below the grid", async () => {
  await local.goTo("B16");
  await selected().getByText("Tin + sample (g): Weigh the tin with the sample. Leave blank what is not weighed yet.").waitFor();
});

test("an entry outside its rule is refused", async () => {
  await local.type("B16", "heavy");
  await local.page.getByText("Type a weight in grams, a number from 0 up.").first().waitFor();
  await local.picture("refused");
  await local.page.keyboard.press("Escape");
  await local.page.keyboard.press("Escape");
  expect((await local.read("B16")).value).toBe(256.55);
});

test("the saved .xlsx opens again with the same formulas and values", async () => {
  const before = [await local.read("K5"), await local.read("J3"), await local.read("B30"), await local.read("D15")];
  const [download] = await Promise.all([local.page.waitForEvent("download"), local.page.getByRole("button", { name: "Save .xlsx" }).click()]);
  expect(download.suggestedFilename()).toBe("retort-workbook.xlsx");
  const saved = await download.path();
  const file = new FileWorkbook();
  await file.xlsx.load(new Uint8Array(readFileSync(saved)).buffer);
  expect(file.getWorksheet(demoKiln.name)?.getCell("J3")).toMatchObject({ formula: '_xldudf_RETORT_MOLARMASS("CaCO3")', result: 100.086 });
  await local.type("J3", "gone");
  await local.page.locator("#file").setInputFiles({ name: "run.xlsx", mimeType: "application/octet-stream", buffer: readFileSync(saved) });
  const dialog = local.page.getByRole("dialog", { name: "Not saved yet" });
  await dialog.waitFor();
  await dialog.getByRole("button", { name: "Open without saving" }).click();
  await local.page.getByText("Opened run.xlsx.").waitFor();
  await local.settled();
  expect([await local.read("K5"), await local.read("J3"), await local.read("B30"), await local.read("D15")]).toEqual(before);
  await local.picture("opened-again");
});

test("a file that is no workbook is refused in words and the sheets stay", async () => {
  await local.page
    .locator("#file")
    .setInputFiles({ name: "notes.xlsx", mimeType: "application/octet-stream", buffer: Buffer.from("not a workbook") });
  await local.page.getByText("This file is text, such as a .csv list, in which nobody can tell decimal commas from separators").waitFor();
  expect((await local.read("J3")).value).toBe(100.086);
});

/** Saves, types into J3 and chooses the file just saved. */
const chooseAfterTyping = async (text: string): Promise<void> => {
  const [download] = await Promise.all([local.page.waitForEvent("download"), local.page.getByRole("button", { name: "Save .xlsx" }).click()]);
  const file = { name: "other.xlsx", mimeType: "application/octet-stream", buffer: readFileSync(await download.path()) };
  await local.type("J3", text);
  await local.page.locator("#file").setInputFiles(file);
};

test("opening a file asks first when something was typed since the last save, and Escape keeps the sheets", async () => {
  await chooseAfterTyping("typed since the last save");
  const dialog = local.page.getByRole("dialog", { name: "Not saved yet" });
  await dialog.getByText("Something was typed since the last save. Opening other.xlsx puts its sheets in place of all that are open here.").waitFor();
  expect(await local.page.evaluate(() => document.activeElement?.textContent)).toBe("Keep these sheets");
  await local.picture("asks-before-opening");
  await local.page.evaluate(axe.source);
  const { violations } = await local.page.evaluate(() => (window as unknown as { axe: typeof axe }).axe.run("#unsaved"));
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  await local.page.keyboard.press("Escape");
  await local.page.getByText("other.xlsx was not opened; the sheets stay as they are.").waitFor();
  expect((await local.read("J3")).value).toBe("typed since the last save");
});

test("the dialog is worked by keyboard alone: Tab goes from button to button, and saving comes before opening", async () => {
  await chooseAfterTyping("typed later");
  await local.page.getByRole("dialog").waitFor();
  await local.page.keyboard.press("Tab");
  expect(await local.page.evaluate(() => document.activeElement?.textContent)).toBe("Save, then open");
  const [download] = await Promise.all([local.page.waitForEvent("download"), local.page.keyboard.press("Enter")]);
  const file = new FileWorkbook();
  await file.xlsx.load(new Uint8Array(readFileSync(await download.path())).buffer);
  expect(file.getWorksheet(demoKiln.name)?.getCell("J3").value).toBe("typed later");
  await local.page.getByText("Opened other.xlsx.").waitFor();
  expect((await local.read("J3")).value).toBe("typed since the last save");
});

test("Ctrl+S and Cmd+S save the .xlsx, with what is still being typed, from the grid and from the pane", async () => {
  const savedBy = async (keys: string): Promise<FileWorkbook> => {
    const [download] = await Promise.all([local.page.waitForEvent("download"), local.page.keyboard.press(keys)]);
    const file = new FileWorkbook();
    await file.xlsx.load(new Uint8Array(readFileSync(await download.path())).buffer);
    return file;
  };
  await local.goTo("J4");
  await local.page.keyboard.type("half", { delay: 20 });
  expect((await savedBy("Control+s")).getWorksheet(demoKiln.name)?.getCell("J4").value).toBe("half");
  expect(await selected().locator(".address").textContent()).toBe(`${demoKiln.name}, J4`);
  await local.page.frameLocator("#pane").getByRole("tab").first().focus();
  expect((await savedBy("Meta+s")).getWorksheet(demoKiln.name)?.getCell("J4").value).toBe("half");
});

test("a button shows and hides the pane, and tells which", async () => {
  const button = local.page.getByRole("button", { name: "Task pane" });
  const gridWidth = async (): Promise<number> => (await local.page.locator("#grid").boundingBox())?.width ?? 0;
  expect(await button.getAttribute("aria-expanded")).toBe("true");
  const beside = await gridWidth();
  await button.press("Enter");
  expect(await button.getAttribute("aria-expanded")).toBe("false");
  expect(await local.page.locator("#pane").isVisible()).toBe(false);
  expect(await gridWidth()).toBe(beside + 360);
  await button.press("Enter");
  expect([await button.getAttribute("aria-expanded"), await gridWidth()]).toEqual(["true", beside]);
});

test("a page narrower than 900 px has the pane below the grid, both as wide as the page", async () => {
  const wide = local.page.viewportSize() ?? { width: 0, height: 0 };
  await local.page.setViewportSize({ width: 640, height: 860 });
  const [grid, pane] = [await local.page.locator("#grid").boundingBox(), await local.page.locator("#pane").boundingBox()];
  expect([grid?.width, pane?.width]).toEqual([640, 640]);
  expect(grid?.height).toBeGreaterThan(200);
  expect(pane?.y).toBeGreaterThanOrEqual((grid?.y ?? 0) + (grid?.height ?? 0));
  await local.picture("narrow");
  await local.page.getByRole("button", { name: "Task pane" }).click();
  expect((await local.page.locator("#grid").boundingBox())?.height).toBeGreaterThan(grid?.height ?? Infinity);
  await local.picture("narrow-without-pane");
  await local.page.getByRole("button", { name: "Task pane" }).click();
  await local.page.setViewportSize(wide);
});

test("nothing was asked of another origin, stored in the browser, or complained of in the console", async () => {
  const stored = await local.page.evaluate(() => [localStorage.length, sessionStorage.length, document.cookie]);
  expect(stored).toEqual([0, 0, ""]);
  expect(local.complaints).toEqual([]);
});
