// Run sheets on a phone-sized screen and at 200 % zoom, what stands below messages in the pane, and clock times typed into the grid.
import type { Frame } from "playwright-core";
import type { WorkbenchWindow } from "../../src/workbench/WorkbenchWindow";
import { LocalWorkbook } from "./localWorkbook";
import { RunSheetOnPage } from "./RunSheetOnPage";

jest.setTimeout(240_000);

let local: LocalWorkbook;
let pane: Frame;
beforeAll(async () => {
  local = await LocalWorkbook.open();
  await local.page.frameLocator("#pane").getByRole("tab").first().waitFor();
  pane = local.page.frames().find((frame) => frame.url().endsWith("pane.html")) ?? local.page.mainFrame();
});
afterAll(() => local?.close());

interface Edges {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The selected cell, and what the grid has for cells: without column letters, row numbers, rows that stay and the scroll bars. */
async function inView(): Promise<{ readonly cell: Edges; readonly room: Edges }> {
  return local.page.evaluate(() => {
    const [LETTERS, NUMBERS, SCROLL_BAR] = [20, 46, 10];
    const sheet = (window as WorkbenchWindow).retortWorkbench?.engine.book.getActiveSheet();
    const canvas = document.querySelector('#grid canvas[id^="univer-sheet-main"]')?.getBoundingClientRect();
    const range = sheet?.getActiveRange();
    if (!sheet || canvas === undefined || !range) throw new Error("no sheet in view");
    // The engine tells where a cell lies on the whole sheet, and how far that is scrolled.
    const { sheetViewStartRow, sheetViewStartColumn, offsetX, offsetY } = (
      sheet as unknown as { getScrollState(): Record<"sheetViewStartRow" | "sheetViewStartColumn" | "offsetX" | "offsetY", number> }
    ).getScrollState();
    const [row, column, stays] = [range.getRow(), range.getColumn(), sheet.getFrozenRows()];
    const size = (from: number, to: number, of: (index: number) => number): number =>
      Array.from({ length: Math.max(0, to - from) }, (_, index) => of(from + index)).reduce((sum, one) => sum + one, 0);
    const high = (from: number, to: number): number => size(from, to, (index) => sheet.getRowHeight(index));
    const wide = (from: number, to: number): number => size(from, to, (index) => sheet.getColumnWidth(index));
    const before = (from: number, to: number, of: (from: number, to: number) => number): number => (to >= from ? of(from, to) : -of(to, from));
    const frozen = high(0, stays);
    const left = canvas.left + NUMBERS + before(sheetViewStartColumn, column, wide) - offsetX;
    const top = canvas.top + LETTERS + frozen + before(stays + sheetViewStartRow, row, high) - offsetY;
    const [right, bottom] = [left + wide(column, column + 1), top + high(row, row + 1)];
    return {
      cell: { left, top, right, bottom },
      room: {
        left: canvas.left + NUMBERS,
        top: canvas.top + LETTERS + frozen,
        right: Math.min(canvas.right, innerWidth) - SCROLL_BAR,
        // The lower bar is drawn thin over the last row, of which it leaves the text.
        bottom: Math.min(canvas.bottom, innerHeight),
      },
    };
  });
}

// 1366 by 768 at 200 % is 683 by 384.
test.each([
  [320, 640, "Drying and charring", "1"],
  [320, 640, "Salt or mineral", "6"],
  [320, 640, "Balance check", "1"],
  [683, 384, "Drying and charring", "6"],
  [683, 384, "Salt or mineral", "1"],
])("at %i x %i the start cell of a new sheet of %s is in view (%s samples)", async (width, height, kind, samples) => {
  await local.page.setViewportSize({ width, height });
  await RunSheetOnPage.insert(local, kind, samples);
  await local.page.waitForTimeout(500);
  const { cell, room } = await inView();
  await local.picture(`start-${width}-${kind.split(" ")[0] ?? ""}-${samples}`);
  expect([cell.left >= room.left - 1, cell.top >= room.top - 1, cell.right <= room.right + 1, cell.bottom <= room.bottom + 1, cell, room]).toEqual([
    ...[true, true, true, true],
    ...[cell, room],
  ]);
});

/** Boxes with messages and buttons of the pane that stand less than 6 px apart from what comes before or after them, one above the other. */
function flush(): string[] {
  const LEAST = 6;
  const isSeen = (one: Element): boolean => one.checkVisibility({ visibilityProperty: true }) && one.getBoundingClientRect().height > 0;
  const told = [...document.querySelectorAll(".status:not(:empty), button.primary, button.secondary, section > h2")].filter(isSeen);
  return told.flatMap((one, index) => {
    const next = told[index + 1];
    if (next === undefined) return [];
    const [above, below] = [one.getBoundingClientRect(), next.getBoundingClientRect()];
    const areStacked = above.left < below.right && below.left < above.right && below.top >= above.bottom - 1;
    return areStacked && below.top - above.bottom < LEAST ? [`${one.outerHTML.slice(0, 60)} | ${next.outerHTML.slice(0, 60)}`] : [];
  });
}

test.each(["Run sheet", "Functions", "This cell", "Share"])("nothing in the tab %s stands flush with a message", async (name) => {
  await local.page.setViewportSize({ width: 1366, height: 768 });
  await pane.getByRole("tab", { name }).click();
  await pane.evaluate(() => {
    for (const one of document.querySelectorAll(".status")) one.textContent = "What was done, in a sentence.";
    for (const one of document.querySelectorAll("details")) one.open = true;
    for (const one of document.querySelectorAll<HTMLElement>(".planner button, section.report button")) one.hidden = false;
  });
  expect(await pane.evaluate(flush)).toEqual([]);
});

test("a clock time that is none is refused in the grid in words, and leaves its box blank", async () => {
  await local.page.setViewportSize({ width: 1366, height: 768 });
  await RunSheetOnPage.insert(local, "Drying and charring", "1");
  for (const typed of ["24:00", "25:10", "9:75", "9:3", "9.75", "930", "0930", "21h30"]) {
    await local.goTo("B12");
    await local.page.keyboard.type(typed, { delay: 20 });
    await local.page.keyboard.press("Enter");
    const told = local.page.getByText(/hours 0 to 23, a colon, minutes 00 to 59/).first();
    await told.waitFor();
    await local.picture(`clock-${typed.replace(/\W/g, "-")}`);
    await local.page.keyboard.press("Escape");
    await local.page.keyboard.press("Escape");
    await local.settled();
    expect([typed, (await local.read("B12")).value]).toEqual([typed, null]);
  }
  await local.type("B12", "9:30 pm");
  expect((await local.read("B12")).shown).toBe("21:30");
});
