// Each kind of run weighed in from the pane's one box, on a phone. The runs are invented, as in tests/pane/runSheet/weighIn.
import type { Frame } from "playwright-core";
import { LocalWorkbook } from "./localWorkbook";
import { RunSheetOnPage } from "./RunSheetOnPage";
import { cutOff, scrolls } from "./seenOnPage";

jest.setTimeout(240_000);

const PHONE = { width: 360, height: 640 };
const NARROWEST = { width: 320, height: 640 };

let local: LocalWorkbook;
let pane: Frame;
beforeAll(async () => {
  local = await LocalWorkbook.open();
  await local.page.setViewportSize(PHONE);
  await RunSheetOnPage.pane(local).getByRole("tab").first().waitFor();
  pane = local.page.frames().find((frame) => frame.url().endsWith("pane.html")) ?? local.page.mainFrame();
});
afterAll(() => local?.close());

const label = async (): Promise<string> => (await pane.locator(".weigh-next").textContent()) ?? "";
const messages = async (): Promise<string> => (await pane.locator(".weigh-in .messages").textContent()) ?? "";

/** Types a reading and presses Enter. @returns what the pane says of it */
async function enter(reading: string, time = ""): Promise<string> {
  if (time !== "") await pane.locator("#weigh-time").fill(time);
  await pane.locator("#weigh-reading").fill(reading);
  const before = `${await messages()}${await label()}`;
  await pane.locator("#weigh-reading").press("Enter");
  await pane.waitForFunction(
    (was) => `${document.querySelector(".weigh-in .messages")?.textContent}${document.querySelector(".weigh-next")?.textContent}` !== was,
    before,
  );
  return messages();
}

async function press(name: string): Promise<void> {
  await pane.getByRole("button", { name, exact: true }).click();
}

/** Inserts a run of a kind and gives its weigh-in the whole screen. */
async function begin(kind: string, first: string): Promise<void> {
  if (await pane.getByRole("button", { name: "Back to the sheet" }).isVisible()) await press("Back to the sheet");
  await RunSheetOnPage.insert(local, kind);
  await pane.getByText(first).waitFor();
  await press("Whole screen");
}

/** What is asked for stands in view with its box and the button that enters it, and nothing runs out of the page. */
async function fits(name: string): Promise<void> {
  for (const size of [PHONE, NARROWEST]) {
    await local.page.setViewportSize(size);
    await pane.locator(".weigh-next").scrollIntoViewIfNeeded();
    expect([name, size.width, await pane.evaluate(cutOff)]).toEqual([name, size.width, []]);
    expect(await pane.evaluate(scrolls)).toMatchObject({ sideways: false });
    const low = await pane.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>(".weigh-in button")]
        .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 44)
        .map((one) => one.textContent),
    );
    expect([name, size.width, low]).toEqual([name, size.width, []]);
    const shown = await pane.evaluate(() => {
      const [top, bottom] = [".weigh-next", ".weigh-form button.primary"].map((one) => document.querySelector(one)?.getBoundingClientRect());
      return (top?.top ?? -1) >= 0 && (bottom?.bottom ?? Infinity) <= innerHeight;
    });
    expect([name, size.width, shown]).toEqual([name, size.width, true]);
    await local.picture(`weigh-in-${name}-${size.width}`);
  }
  await local.page.setViewportSize(PHONE);
}

test("a run with liquids caught: apparatus empty, fire, char, what was caught", async () => {
  await begin("Charring with liquids caught", "Empty vessel (C11), g");
  await enter("41.86");
  for (const [grams, time] of [["72.14", "9:00"], ["62.71", "9:30"], ["62.71", "10:00"]] as const) await enter(grams, time); // prettier-ignore
  expect(await label()).toMatch(/^Before the fire, tube and lid \(C\d+\), g$/);
  await enter("55.2");
  await press("Leave this box blank");
  expect(await label()).toMatch(/^Before the fire, receiver 1 /);
  await fits("receiver");
  await enter("120.5");
  for (const [firing, grams] of [
    [1, "47.85"],
    [2, "47.85"],
  ] as const) {
    // prettier-ignore
    expect(await label()).toMatch(new RegExp(`^Lit, firing ${firing} `));
    if (firing === 1) await fits("firing");
    await press("Straight to the weighing");
    await enter(grams);
  }
  expect(await label()).toMatch(/^After the fire, tube and lid /);
  expect(await enter("55.41")).toMatch(/Caught 0\.21 g\./);
  await enter("127.9");
  expect(await label()).toMatch(/^Gas measured /);
  await fits("ledger");
  await press("Leave gas, water and ± blank");
  await enter("41.86");
  await pane.getByText("Run complete: all weighings are in").first().waitFor();
  await local.picture("weigh-in-liquids-done");
});

test("staged heating: a stage is heated, weighed and named, and the person says when it is over", async () => {
  await begin("Staged heating", "Empty vessel (C11), g");
  await enter("21.5");
  for (const [grams, time] of [["26.5", "9:00"], ["26.5", "9:30"]] as const) await enter(grams, time); // prettier-ignore
  expect(await label()).toMatch(/^Lit, stage 1 /);
  await press("Leave this box blank");
  await enter("120");
  await press("Straight to the weighing");
  expect(await enter("25.78")).toMatch(/Left: 85\.60 % of the dry sample\./);
  expect(await label()).toMatch(/^What left, stage 1 /);
  expect(await pane.locator("#weigh-reading").getAttribute("inputmode")).toBe("text");
  await enter("crystal water");
  await fits("stage");
  await press("No more stages");
  expect(await label()).toMatch(/^Empty vessel again /);
});

test("a balance check: the weight, a round on its day, and the corners", async () => {
  await begin("Balance check", "Check weight (B9), g");
  await enter("200");
  await press("Leave this box blank");
  expect(await pane.getByLabel("Day of it").getAttribute("placeholder")).toMatch(/^today: \d{4}-\d\d-\d\d$/);
  await fits("balance-round");
  expect(await enter("200.01", "21 Nov 2026")).toMatch(/on 2026-11-21, in C13\. 0\.01 g above the weight's value\./);
  await enter("0");
  expect(await label()).toMatch(/^Corners, centre /);
  await fits("balance-corner");
  await press("No corners this time");
  expect(await label()).toMatch(/^Check weight, round 2 /);
  expect(local.complaints).toEqual([]);
});

test("a salt: heated as weighed in", async () => {
  await begin("Salt or mineral", "Empty vessel (C15), g");
  await fits("salt");
  await enter("20.11");
  expect(await enter("22.51", "9:00")).toMatch(/^Round 1: salt: 22\.51 g at 9:00/);
});
