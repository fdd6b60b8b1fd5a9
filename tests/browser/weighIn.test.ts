import axe from "axe-core";
import type { Frame } from "playwright-core";
import type { WorkbenchWindow } from "../../src/workbench/WorkbenchWindow";
import { LocalWorkbook } from "./localWorkbook";
import { RunSheetOnPage } from "./RunSheetOnPage";
import { cutOff, scrolls } from "./seenOnPage";

jest.setTimeout(180_000);

const PHONE = { width: 390, height: 844 };
const NARROWEST = { width: 320, height: 640 };
const DESK = { width: 1366, height: 768 };

let local: LocalWorkbook;
let pane: Frame;
let sheet: RunSheetOnPage;
let firstRun = "";
beforeAll(async () => {
  local = await LocalWorkbook.open();
  await local.page.setViewportSize(PHONE);
  await RunSheetOnPage.pane(local).getByRole("tab").first().waitFor();
  pane = local.page.frames().find((frame) => frame.url().endsWith("pane.html")) ?? local.page.mainFrame();
  sheet = await RunSheetOnPage.insert(local, "Drying and charring");
  firstRun = sheet.name;
  await pane.locator("#weigh-reading").waitFor();
});
afterAll(() => local?.close());

const status = () => pane.locator(".weigh-in .status");
const label = () => pane.locator(".weigh-next").textContent();
const focusedId = () => pane.evaluate(() => document.activeElement?.id);

/** Types a reading, and its time where one is given, and presses Enter. */
async function enter(reading: string, time = ""): Promise<string> {
  if (time !== "") await pane.locator("#weigh-time").fill(time);
  await pane.locator("#weigh-reading").fill(reading);
  const before = (await pane.locator(".weigh-in .messages").textContent()) ?? "";
  await pane.locator("#weigh-reading").press("Enter");
  await pane.waitForFunction((was) => document.querySelector(".weigh-in .messages")?.textContent !== was, before);
  return (await pane.locator(".weigh-in .messages").textContent()) ?? "";
}

/** What the clock on the wall shows so many minutes from now. */
function clockIn(minutes: number): string {
  const then = new Date(Date.now() + minutes * 60_000);
  return `${then.getHours()}:${String(then.getMinutes()).padStart(2, "0")}`;
}

async function accessible(): Promise<void> {
  await pane.evaluate(axe.source);
  const violations = await pane.evaluate(async () => (await window.axe.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`));
  expect(violations).toEqual([]);
}

test("a whole run of drying and charring is entered from the pane alone, on a phone", async () => {
  await pane.getByRole("button", { name: "Whole screen" }).click();
  expect(await label()).toBe("Empty vessel (C11), g");
  expect(await enter("25.00")).toBe("Empty vessel: 25.00 g, in C11.");
  expect(await focusedId()).toBe("weigh-reading");
  // Before now, which is when the fire is lit.
  const [first = "", second = "", third = "", last = ""] = [-125, -95, -65, -35].map(clockIn);
  for (const [reading, time] of [["65,20", first], ["55.31", second], ["51.21", third]] as const) await enter(reading, time); // prettier-ignore
  await local.picture("weigh-in-run");
  await accessible();
  expect(await enter("51.21 g", last)).toMatch(/^Leave out the unit, "g"\. Type the weight in grams as a plain number/);
  expect(await pane.locator("#weigh-reading").getAttribute("aria-invalid")).toBe("true");
  expect(await enter("61.21", last)).toMatch(/^Before it is entered: \? C15 is heavier than the weight before/);
  await pane.getByRole("button", { name: "Enter it all the same" }).waitFor();
  await local.picture("weigh-in-run-doubt");
  await accessible();
  expect(await enter("51.21", last)).toBe(
    `Vessel + sample, round 4: 51.21 g at ${last}, in C15. Lost 0.00 g. The sheet says: no loss that counts; ✓ dry since round 4.`,
  );
  expect(await focusedId()).toBe("weigh-reading");
  await pane.getByRole("button", { name: "Take the last one back" }).click();
  await status().getByText("taken back").waitFor();
  expect([await pane.locator("#weigh-reading").inputValue(), await pane.locator("#weigh-time").inputValue()]).toEqual(["51.21", last]);
  await enter("51.21", last);
  expect(await label()).toMatch(/^Lit, firing 1 \(/);
  await pane.getByRole("button", { name: "Lit: now" }).click();
  await status()
    .getByText(/^Lit, firing 1: \d+:\d\d, in /)
    .waitFor();
  for (const firing of [1, 2, 3]) {
    const pass = pane.getByRole("button", { name: "Leave this box blank" });
    while (await pass.isVisible()) await pass.click();
    expect(await label()).toContain(`after firing ${firing}`);
    await enter(firing === 1 ? "32.90" : "32.53");
  }
  expect(await label()).toMatch(/^Empty vessel again \(/);
  await enter("25.00");
  await pane.getByText("Run complete: all weighings are in").first().waitFor();
  expect((await sheet.head())[1]).toBe("71.271 % ± 0.046 % (95 %) of the dry sample left as vapour; 28.729 % stayed. 1 sample.");
  expect(local.complaints).toEqual([]);
});

describe("weighing in is for cold fingers", () => {
  beforeAll(async () => {
    await pane.getByRole("button", { name: "Back to the sheet" }).click();
    sheet = await RunSheetOnPage.insert(local, "Drying and charring", "2");
    await pane.getByText("Empty vessel, sample 1 (C11), g").waitFor();
  });

  test.each([
    ["phone", PHONE],
    ["narrowest", NARROWEST],
    ["desk", DESK],
  ] as const)("on a %s nothing is cut off, and targets are large", async (name, size) => {
    await local.page.setViewportSize(size);
    const whole = pane.getByRole("button", { name: "Whole screen" });
    await whole.waitFor({ state: name === "desk" ? "hidden" : "visible" });
    if (name !== "desk") await whole.click();
    await pane.locator("#weigh-reading").scrollIntoViewIfNeeded();
    const sizes = await pane.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>(".weigh-in button, .weigh-in input:not([type=checkbox]), .weigh-in .choice")]
        .filter((one) => one.checkVisibility())
        .map((one) => ({
          what: one.id || one.textContent || "",
          height: one.getBoundingClientRect().height,
          text: parseFloat(getComputedStyle(one).fontSize),
        })),
    );
    expect(sizes.filter(({ height }) => height < 44)).toEqual([]);
    expect(sizes.find(({ what }) => what === "weigh-reading")?.text).toBeGreaterThanOrEqual(28);
    expect(await pane.locator("#weigh-reading").getAttribute("inputmode")).toBe("decimal");
    expect(await pane.evaluate(cutOff)).toEqual([]);
    expect(await pane.evaluate(scrolls)).toMatchObject({ sideways: false });
    await accessible();
    await local.picture(`weigh-in-${name}`);
    if (name !== "desk") {
      const box = await local.page.locator("#pane").boundingBox();
      expect(box?.width).toBe(size.width);
      expect(box?.height).toBeGreaterThan(size.height * 0.75);
      await pane.getByRole("button", { name: "Back to the sheet" }).click();
    }
    expect((await local.page.locator("#grid").boundingBox())?.height).toBeGreaterThanOrEqual(276);
  });

  test("the next round is counted down to, silently but for its coming", async () => {
    await enter("25");
    await enter("26");
    await enter("65", clockIn(0));
    await enter("66");
    const timer = pane.getByRole("timer");
    expect(await timer.getAttribute("aria-live")).toBe("off");
    expect(await timer.textContent()).toMatch(/^Next round due in (19|20):\d\d$/);
    const seen = await timer.textContent();
    await pane.waitForFunction((was) => document.querySelector("[role=timer]")?.textContent !== was, seen);
    expect(await status().textContent()).toMatch(/^Round 1: moist, sample 2: 66\.00 g/);
    expect(await pane.locator("#weigh-sound").isChecked()).toBe(false);
    await pane.locator("#weigh-sound").check();
    expect(local.complaints).toEqual([]);
  });

  test("what the pane says of the run follows each entry, though neither the selection nor its cell changes", async () => {
    expect(await local.page.evaluate(() => (window as WorkbenchWindow).retortWorkbench?.workbook.selectedCell())).toMatchObject({ cell: "C11" });
    await pane.locator(".run-answer .answer", { hasText: "Drying. One round weighed: no answer yet." }).waitFor();
    const round2 = clockIn(20);
    expect(await enter("60", round2)).toContain(`Vessel + sample, round 2, sample 1: 60.00 g at ${round2}, in C13.`);
    await enter("61");
    await pane.locator(".chart-section .hint", { hasText: `Weighings on sheet "${sheet.name}".` }).waitFor();
    await pane.locator(".run-answer .answer", { hasText: /^Drying/, hasNotText: "One round weighed" }).waitFor();
    await pane.getByRole("button", { name: "Take the last one back" }).click();
    await status().getByText("taken back").waitFor();
  });

  test.each([
    ["desk", DESK],
    ["phone", PHONE],
  ])("on a %s what is said of an entry is in view with the box it is about", async (_, size) => {
    await local.page.setViewportSize(size);
    const outOfView = (): Promise<(string | undefined)[]> =>
      pane.evaluate(() =>
        [".weigh-next", "#weigh-reading", ".weigh-in .messages"]
          .map((one) => ({ one, box: document.querySelector(one)?.getBoundingClientRect() }))
          .filter(({ box }) => box === undefined || box.top < -0.5 || box.bottom > innerHeight + 0.5)
          .map(({ one }) => one),
      );
    expect(await enter("99")).toMatch(/^Before it is entered: \? D13 is heavier than the weight before/);
    expect(await outOfView()).toEqual([]);
    expect(await enter("")).toMatch(/nothing here/);
    expect(await outOfView()).toEqual([]);
  });
});

describe("This cell on a run sheet", () => {
  const selectLabelled = async (label: string, column: string): Promise<void> => {
    await local.page.evaluate(
      async ([name, wanted, letter]) => {
        const workbook = (window as WorkbenchWindow).retortWorkbench?.workbook;
        const rows = (await workbook?.readUsed(name ?? ""))?.rows ?? [];
        const found = rows.findIndex(([first]) => first?.value === wanted);
        await workbook?.select({ sheet: name ?? "", cell: `${letter}${found + 1}` });
      },
      [firstRun, label, column] as const,
    );
  };

  test.each([
    ["share", "Left as vapour, of dry", "C", "Left as vapour, of dry (C", / = 1 - 7\.53 \/ 26\.21 = 0\.7127051 \(71\.27 %\)$/],
    ["plus-minus", "Left as vapour, of dry", "F", "± 95 %", /^± 95 % \(F\d+\) = 2 × sqrt\(.+\) \/ 26\.21 = 0\.000\d+ \(0\.045\d+ %\)$/],
  ])("explains its %s with the numbers put in", async (name, label, column, begins, line) => {
    await local.page.setViewportSize(DESK);
    await pane.getByRole("tab", { name: "This cell" }).click();
    await selectLabelled(label, column);
    const last = pane.locator(".working").first().locator("li", { hasText: begins }).last();
    await last.waitFor();
    expect(await last.textContent()).toMatch(line);
    await pane.getByText("How the sheet decides").click();
    await accessible();
    expect(await pane.evaluate(cutOff)).toEqual([]);
    await local.picture(`this-cell-of-run-${name}`);
  });
});
