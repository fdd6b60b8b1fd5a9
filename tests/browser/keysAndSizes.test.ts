import { invertColorByMatrix } from "@univerjs/core";
import axe from "axe-core";
import type { Frame } from "playwright-core";
import { PNG } from "pngjs";
import type { WorkbenchWindow } from "../../src/workbench/WorkbenchWindow";
import { sheetStyles } from "../../src/workbook/sheetStyles";
import { contrast, LEAST_FOR_TEXT } from "../workbook/contrast";
import { LocalWorkbook } from "./localWorkbook";
import { cutOff, focused, scrolls, smallTargets, textsInSight } from "./seenOnPage";

jest.setTimeout(60_000);

const DESK = { width: 1366, height: 768 };

let local: LocalWorkbook;
let pane: Frame;
beforeAll(async () => {
  local = await LocalWorkbook.open();
  await local.page.setViewportSize(DESK);
  await local.page.frameLocator("#pane").getByRole("tab").first().waitFor();
  pane = local.page.frames().find((frame) => frame.url().endsWith("pane.html")) ?? local.page.mainFrame();
});
afterAll(() => local?.close());

const press = async (...keys: readonly string[]): Promise<string> => {
  for (const key of keys) await local.page.keyboard.press(key);
  return local.page.evaluate(focused);
};
const selected = (address: string) => local.page.locator("#selected .address").getByText(address, { exact: true }).waitFor();
const showTab = (name: string) => pane.getByRole("tab", { name }).click();

describe("F6", () => {
  beforeEach(async () => {
    await local.goTo("J3");
    expect(await local.page.evaluate(focused)).toBe("cells");
  });

  test("goes on from the grid to the pane, the bar and the grid again, where the arrow keys move the selection", async () => {
    expect(await press("F6")).toBe("pane: tab-run");
    expect(await press("F6")).toBe("open-file");
    expect(await press("F6")).toBe("cells");
    await press("ArrowDown");
    await selected("Orchard kiln, J4");
  });

  test("goes back with Shift, each time to where one was", async () => {
    await press("F6", "ArrowRight", "ArrowRight");
    expect(await press("F6", "Tab")).toBe("save-file");
    expect(await press("Shift+F6")).toBe("pane: tab-cell");
    expect(await press("Shift+F6")).toBe("cells");
    expect(await press("Shift+F6")).toBe("save-file");
    await press("Shift+Tab");
    await press("Shift+F6", "Home");
  });

  test("enters what is being typed into the cell", async () => {
    await local.page.keyboard.type("half", { delay: 20 });
    expect(await press("F6")).toMatch(/^pane: /);
    await local.settled();
    expect((await local.read("J3")).value).toBe("half");
    expect(await press("Escape")).toBe("cells");
    await selected("Orchard kiln, J3");
    await press("Delete");
  });

  test("passes by a hidden pane", async () => {
    await local.page.locator("#show-pane").click();
    await local.goTo("J3");
    expect(await press("F6")).toBe("show-pane");
    expect(await press("F6")).toBe("cells");
    await local.page.locator("#show-pane").click();
  });

  test("leaves an open question alone", async () => {
    await local.type("J3", "not saved");
    await local.page.locator("#file").setInputFiles({ name: "other.xlsx", mimeType: "application/octet-stream", buffer: Buffer.from("") });
    await local.page.getByRole("dialog").waitFor();
    expect(await press("F6")).toBe("Keep these sheets");
    await press("Escape");
    await local.page.getByText("other.xlsx was not opened").waitFor();
  });

  test("shows where it came: a frame around the grid, a line around a control", async () => {
    const around = () => local.page.evaluate(() => getComputedStyle(document.querySelector("#grid") as Element, "::after").borderTopStyle);
    expect(await around()).toBe("solid");
    await press("F6");
    expect(await pane.evaluate(() => getComputedStyle(document.activeElement as Element).outlineStyle)).toBe("solid");
    expect(await around()).toBe("none");
    await press("F6");
    expect(await local.page.evaluate(() => getComputedStyle(document.activeElement as Element).outlineStyle)).toBe("solid");
  });

  test("leaves the keys to the cells while the pane, where one was before, explains another cell", async () => {
    await showTab("This cell");
    await local.goTo("B23");
    await pane.locator(".more summary").first().click();
    await local.goTo("C14");
    await pane.getByRole("heading", { name: /^C14/ }).waitFor();
    expect(await local.page.evaluate(focused)).toBe("cells");
    await local.goTo("J3");
    await showTab("Run sheet");
  });
});

describe("Escape", () => {
  test("goes back to the part one came from, and then to the cells", async () => {
    await local.goTo("J5");
    await press("F6", "F6");
    expect(await press("Escape")).toMatch(/^pane: /);
    expect(await press("Escape")).toBe("cells");
    await press("ArrowDown");
    await selected("Orchard kiln, J6");
  });

  test("empties the search box before it leaves the pane", async () => {
    await showTab("Functions");
    await pane.locator("#function-search").click();
    await local.page.keyboard.type("ash");
    expect(await press("Escape")).toBe("pane: function-search");
    expect(await pane.locator("#function-search").inputValue()).toBe("");
    expect(await press("Escape")).toBe("cells");
  });
});

describe("Tab", () => {
  test("comes to every control of the bar and from there to the grid's own, sheets included", async () => {
    await local.page.locator("#open-file").focus();
    const met: string[] = [];
    for (let step = 0; step < 9; step++) met.push(await press("Tab"));
    expect(met).toEqual([
      ...["save-file", "print-sheet", "show-pane", "Go to cell", "More or fewer lines", "Add a sheet", "All sheets", "Orchard kiln", "cells"],
    ]);
    await local.page.getByRole("tab", { name: "Orchard kiln" }).focus();
    expect(await press("ArrowRight")).toBe("Salts class");
    await selected("Salts class, A1");
    expect(await press("ArrowLeft")).toBe("Orchard kiln");
    expect(await press("F6")).toMatch(/^pane: /);
  });

  test.each(["Run sheet", "Functions", "This cell", "Share"])(
    "comes to every control of the pane in %s, each with a line around it",
    async (name) => {
      await local.goTo("B24");
      await showTab(name);
      await pane.locator("[role=tabpanel]:not([hidden]) h2:visible").first().waitFor();
      await pane.evaluate(() => {
        for (const closed of document.querySelectorAll<HTMLDetailsElement>("[role=tabpanel]:not([hidden]) details")) closed.open = true;
        document.addEventListener("focusin", ({ target }) => {
          const { outlineStyle } = getComputedStyle(target as Element);
          (target as HTMLElement).dataset.met = outlineStyle === "none" ? "unseen" : "seen";
        });
      });
      const frames = local.page.locator("#pane");
      while (await frames.evaluate((frame) => document.activeElement === frame)) await local.page.keyboard.press("Tab");
      // Nothing of the engine's that cannot be seen comes after the pane.
      expect(await local.page.evaluate(() => document.activeElement?.localName)).toBe("body");
      const missed = await pane.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>("a[href], button, input, select, textarea, summary, [tabindex]")]
          .filter((one) => one.tabIndex >= 0 && one.checkVisibility() && !one.matches("[type=radio]:not(:checked)"))
          .filter((one) => one.dataset.met !== "seen" && one.getAttribute("role") !== "tab")
          .map((one) => one.outerHTML.slice(0, 100)),
      );
      expect(missed).toEqual([]);
    },
  );
});

test("a sheet added by a click takes what is typed next", async () => {
  const name = () => local.page.locator('#grid [role="tab"][aria-selected="true"]').textContent();
  await local.page.getByRole("button", { name: "Add a sheet" }).click();
  await selected("Sheet1, A1");
  await local.page.keyboard.type("typed", { delay: 20 });
  await press("Enter");
  await local.settled();
  expect([await name(), (await local.read("A1")).value]).toEqual(["Sheet1", "typed"]);
  await local.page.getByRole("tab", { name: "Orchard kiln" }).click();
  await local.page.waitForFunction(() => document.querySelector("#selected .address")?.textContent?.startsWith("Orchard kiln"));
});

describe.each([
  [320, 640],
  [683, 384],
  [768, 1024],
  [1366, 768],
  [1920, 1080],
])("at %i x %i", (width, height) => {
  beforeAll(async () => {
    await local.page.setViewportSize({ width, height });
    await local.goTo("B24");
    await showTab("Run sheet");
    await local.page.waitForFunction(() => {
      const [grid, canvas] = ["#grid", '#grid canvas[id^="univer-sheet-main"]'].map((one) => document.querySelector(one)?.getBoundingClientRect());
      return grid && canvas && Math.abs(grid.width - canvas.width) < 2 && canvas.bottom < grid.bottom;
    });
  });

  test("eight rows of the grid can be seen whole, with the pane open", async () => {
    expect(await local.page.evaluate(wholeRows)).toBeGreaterThanOrEqual(8);
  });

  test("the page has no scroll bar, and bar with its notices, selected cell and 180 px of the pane are in sight", async () => {
    // From before: what is not saved, and what was not opened.
    expect(await local.page.locator("#kept, #notice").allTextContents()).toEqual([
      expect.stringMatching(/^Not saved/),
      expect.stringMatching(/not opened/),
    ]);
    expect(await local.page.evaluate(scrolls)).toEqual({ sideways: false, down: false, always: false });
    const boxes = await Promise.all(["#bar", "#selected", "#pane"].map((part) => local.page.locator(part).boundingBox()));
    for (const box of boxes) expect((box?.y ?? Infinity) + (box?.height ?? 0)).toBeLessThanOrEqual(height);
    expect(boxes[2]?.height).toBeGreaterThanOrEqual(180);
    expect(boxes[2]?.width).toBeGreaterThanOrEqual(300);
  });

  test("no text is cut off and no control is smaller than a finger, in the page and in each part of the pane", async () => {
    expect([await local.page.evaluate(cutOff), await local.page.evaluate(smallTargets)]).toEqual([[], []]);
    for (const name of ["Run sheet", "Functions", "This cell", "Share"]) {
      await showTab(name);
      const found = [await pane.evaluate(cutOff), await pane.evaluate(smallTargets), await pane.evaluate(scrolls)];
      expect([name, ...found]).toEqual([name, [], [], expect.objectContaining({ sideways: false, always: false })]);
    }
    for (const colorScheme of ["dark", "light"] as const) {
      await local.page.emulateMedia({ colorScheme });
      await local.picture(`size-${width}x${height}-${colorScheme}`);
    }
  });
});

/** How many rows stand whole between the column letters and the scroll bar. */
function wholeRows(): number {
  const SCROLL_BAR = 10;
  const sheet = (window as WorkbenchWindow).retortWorkbench?.engine.book.getActiveSheet();
  const canvas = document.querySelector('#grid canvas[id^="univer-sheet-main"]')?.getBoundingClientRect();
  if (sheet === undefined || canvas === undefined) return 0;
  const letters = sheet.getSheet().getConfig().columnHeader.height ?? 0;
  let left = Math.min(canvas.bottom, innerHeight) - canvas.top - letters - SCROLL_BAR;
  let row = 0;
  while ((left -= sheet.getRowHeight(row)) >= 0) row++;
  return row;
}

test("a tab of the pane that fits the window has no scroll bar", async () => {
  await local.page.setViewportSize({ width: 1920, height: 1600 });
  await showTab("This cell");
  expect(await pane.evaluate(scrolls)).toEqual({ sideways: false, down: false, always: false });
});

test("on a small screen About says what the page is, and the grid keeps its rows", async () => {
  await local.page.setViewportSize({ width: 320, height: 640 });
  expect(await local.page.locator("#about").isVisible()).toBe(false);
  await local.page.getByRole("button", { name: "About" }).press("Enter");
  expect(await local.page.locator("#about").isVisible()).toBe(true);
  expect(await local.page.locator("#about").textContent()).toContain("F6 goes from the grid to the pane and this bar.");
  expect(await local.page.locator("#grid").evaluate((grid) => grid.clientHeight)).toBeGreaterThanOrEqual(288);
  await local.page.getByRole("button", { name: "About" }).press("Enter");
  await local.page.setViewportSize(DESK);
  expect(await local.page.locator("#about").isVisible()).toBe(true);
});

const hex = (channels: readonly number[]): string => `#${channels.map((channel) => Math.round(channel).toString(16).padStart(2, "0")).join("")}`;
const channelsOf = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);
const ofHex = (colour: string): number[] => [1, 3, 5].map((at) => parseInt(colour.slice(at, at + 2), 16));

describe.each(["light", "dark"] as const)("in %s colours", (colorScheme) => {
  beforeAll(async () => {
    await local.page.emulateMedia({ colorScheme });
    await local.page.evaluate(() => {
      for (const id of ["notice", "kept"]) Object.assign(document.getElementById(id) ?? {}, { textContent: "Not saved.", className: "problem" });
    });
  });

  const faint = async (frame: Frame): Promise<string[]> =>
    (await frame.evaluate(textsInSight))
      .filter(({ colour, behind }) => contrast(hex(channelsOf(colour)), hex(channelsOf(behind))) < LEAST_FOR_TEXT)
      .map(({ text, colour, behind }) => `${text}: ${colour} on ${behind}`);

  test("every text of page, pane and help stands out from what lies behind it", async () => {
    await local.goTo("B30");
    await local.page.locator("#selected .message").waitFor();
    expect(await faint(local.page.mainFrame())).toEqual([]);
    for (const name of ["Run sheet", "Functions", "This cell", "Share"]) {
      await showTab(name);
      expect([name, await faint(pane)]).toEqual([name, []]);
    }
    const help = await local.page.context().newPage();
    await help.emulateMedia({ colorScheme });
    await help.setViewportSize({ width: 320, height: 640 });
    for (const file of ["index.html", "moisture.wet.html"]) {
      await help.goto(new URL(`help/${file}`, local.page.url()).href);
      expect((await help.evaluate(textsInSight)).length).toBeGreaterThan(10);
      expect(await faint(help.mainFrame())).toEqual([]);
      expect(await help.evaluate(scrolls)).toMatchObject({ sideways: false, always: false });
    }
    await help.close();
  });

  test("bar, pane, grid and question are of the same kind", async () => {
    const isDark = (colour: string): boolean => contrast(hex(channelsOf(colour)), "#000000") < contrast(hex(channelsOf(colour)), "#FFFFFF");
    const backgroundOf = (part: string) => local.page.locator(part).evaluate((one) => getComputedStyle(one).backgroundColor);
    for (const part of ["body", "#bar", "#selected", "#unsaved"])
      expect([part, isDark(await backgroundOf(part))]).toEqual([part, colorScheme === "dark"]);
    expect(isDark(await pane.evaluate(() => getComputedStyle(document.body).backgroundColor))).toBe(colorScheme === "dark");
    const blank = await blankCell();
    expect(isDark(`rgb(${blank.join(",")})`)).toBe(colorScheme === "dark");
    const drawn = (colour: string): number[] =>
      colorScheme === "dark" ? invertColorByMatrix(ofHex(colour) as [number, number, number]) : ofHex(colour);
    for (const [style, { fontColour, fill }] of Object.entries(sheetStyles)) {
      const ratio = contrast(hex(drawn(fontColour)), hex(fill === undefined ? blank : drawn(fill)));
      expect([style, ratio >= LEAST_FOR_TEXT]).toEqual([style, true]);
    }
  });
});

/** The colour of a cell with nothing in it, off the screen: in the last column and row in sight of a sheet scrolled nowhere. */
async function blankCell(): Promise<number[]> {
  await local.goTo("A1");
  const grid = await local.page.locator("#grid").boundingBox();
  const at = { x: (grid?.x ?? 0) + (grid?.width ?? 0) - 60, y: (grid?.y ?? 0) + 113 };
  const { data } = PNG.sync.read(await local.page.screenshot({ clip: { ...at, width: 2, height: 2 } }));
  return [...data.subarray(0, 3)];
}

test.each([
  ["light", { colorScheme: "light", forcedColors: "none" }],
  ["dark", { colorScheme: "dark", forcedColors: "none" }],
  ["forced", { colorScheme: "dark", forcedColors: "active" }],
] as const)("axe-core finds nothing wrong in %s colours, the grid's controls included", async (_look, media) => {
  await local.page.emulateMedia(media);
  // The engine's controls change colour little by little.
  await local.page.waitForTimeout(400);
  await local.page.evaluate(axe.source);
  const { violations, passes } = await local.page.evaluate(() =>
    (window as unknown as { axe: typeof axe }).axe.run({
      // The pane in its frame is checked by itself; the engine hangs a menu on an element without a role and has two regions for
      // its messages under one name.
      exclude: ["#pane", '#grid [data-slot="dropdown-menu-trigger"]', "#grid [data-react-aria-top-layer]"],
    }),
  );
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  expect(passes.length).toBeGreaterThan(20);
});

test("forced colours leave every button an edge and the pressed one its mark", async () => {
  await local.page.emulateMedia({ forcedColors: "active" });
  const edges = await local.page.locator("#bar button:visible").evaluateAll((all) => all.map((one) => getComputedStyle(one).borderTopStyle));
  expect(edges).toEqual(["solid", "solid", "solid", "solid"]);
  expect(await local.page.locator("#show-pane").evaluate((one) => getComputedStyle(one, "::before").content)).toMatch(/^"▾ /);
  await local.page.emulateMedia({ forcedColors: "none" });
});

test("nothing moves where less motion is asked for", async () => {
  await local.page.emulateMedia({ reducedMotion: "reduce" });
  const moving = (): string[] =>
    [...document.querySelectorAll("*")]
      .filter((one) =>
        [...`${getComputedStyle(one).transitionDuration}, ${getComputedStyle(one).animationDuration}`.matchAll(/[\d.e-]+/g)].some(
          ([s]) => Number(s) > 0.001,
        ),
      )
      .map((one) => one.outerHTML.slice(0, 80));
  expect([await local.page.evaluate(moving), await pane.evaluate(moving)]).toEqual([[], []]);
});

test("the page asked nobody else and complained of nothing", () => {
  expect(local.complaints).toEqual([]);
});
